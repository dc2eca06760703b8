using DxAssistant.Knowledge.Content.Constructs;

namespace DxAssistant.Knowledge.Content.Rules.Calculating;

/// <summary>A verdict that the calculation never gives.</summary>
/// <example>Bad: <c>low, high, unequal for thermistor-curve</c>. Good: <c>low, high</c>.</example>
internal sealed class UnknownVerdict : IContentRule
{
    public string Name => "unknown-verdict";

    public string Meaning => "A verdict that the calculation never gives.";

    public RuleExample Bad { get; } = new("checks/room-sensor.md", """
        ## Outcomes
        | Outcome | Answer | Verdict |
        |---|---|---|
        | on-curve | On the curve | within |
        | off-curve | Off the curve | low, high, ⟦unequal⟧ |
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

    public IEnumerable<Diagnostic> Check(Pages pages) =>
        from verdict in VerdictPlaces.Of(pages)
        where VerdictWords.Read(verdict.Word) is not { } kind || !verdict.Judge.Verdicts.Contains(kind)
        select verdict.Page.Error(Name, verdict.Span, $"`{verdict.Judge.Name}` never says `{verdict.Word}`",
            NearestWord.HintOrList(verdict.Word, verdict.Judge.Verdicts.Select(VerdictWords.Of)));
}
