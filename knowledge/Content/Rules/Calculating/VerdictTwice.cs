using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Rules.Frame;

namespace DxAssistant.Knowledge.Content.Rules.Calculating;

/// <summary>A verdict that two outcomes take.</summary>
/// <example>Bad: <c>within in two outcomes</c>. Good: <c>within in one outcome</c>.</example>
internal sealed class VerdictTwice : IContentRule
{
    public string Name => "verdict-twice";

    public string Meaning => "A verdict that two outcomes take.";

    public RuleExample Bad { get; } = new("checks/room-sensor.md", """
        ## Outcomes
        | Outcome | Answer | Verdict |
        |---|---|---|
        | on-curve | On the curve | within |
        | off-curve | Off the curve | low, high, ⟦within⟧ |
        | open | Open | open circuit |
        | short | Near zero | short circuit |
        """);

    public RuleExample Good { get; } = new("checks/room-sensor.md", """
        ## Outcomes
        | Outcome | Answer | Verdict |
        |---|---|---|
        | on-curve | On the curve | within |
        | off-curve | Off the curve | low, high |
        | open | Open | open circuit |
        | short | Near zero | short circuit |
        """);

    // RepeatedRow reports an outcome that stands twice.
    public IEnumerable<Diagnostic> Check(Pages pages) => VerdictPlaces.Of(pages)
        .GroupBy(place => (place.Page, place.Word)).SelectMany(same => same.DistinctBy(place => place.Outcome).Skip(1))
        .Select(place => place.Page.Error(Name, place.Span,
            $"the verdict `{place.Word}` belongs to another outcome already"));
}
