using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Rules.Diagnosis;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Calculating;

/// <summary>A verdict of the calculation that no outcome takes, so that a reading would lead nowhere.</summary>
/// <example>Bad: <c>no outcome takes `high`</c>. Good: <c>low, high</c>.</example>
internal sealed class VerdictWithoutOutcome : IContentRule
{
    public string Name => "verdict-without-outcome";

    public string Meaning =>
        "A verdict of the calculation that no outcome takes, so that a reading would lead nowhere.";

    public bool NeedsFrame => true;

    public RuleExample Bad { get; } = new("checks/room-sensor.md", """
        ## ⟦Outcomes⟧
        | Outcome | Answer | Verdict |
        |---|---|---|
        | on-curve | On the curve | within |
        | off-curve | Off the curve | low |
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
        from page in pages.OfKind(PageKind.Check)
        let check = CalculatedCheck.Of(page)
        where check is not null && OutcomeTable.Of(page) is { } outcomes
            && HasAll(outcomes, LikelihoodTable.Of(page, pages))
        let said = VerdictPlaces.Of(page).Select(place => place.Word).ToArray()
        from verdict in check.Judge.Verdicts.Select(VerdictWords.Of)
        where !said.Contains(verdict) && !IsMeant(verdict, said)
        select page.Error(Name, page.Section("Outcomes")!.Heading.Span,
            $"no outcome takes the verdict `{verdict}` of `{check.Judge.Name}`",
            $"add `{verdict}` to the third cell of the outcome that it means");

    // UnknownOutcome reports an outcome that is missing, and with it go its verdicts.
    private static bool HasAll(OutcomeTable outcomes, LikelihoodTable? table) =>
        table is null || table.Outcomes.All(head => outcomes.Rows.Any(row => row.Id.Text == head.Text));

    // UnknownVerdict reports a misspelt verdict.
    private static bool IsMeant(string verdict, string[] said) => said.Any(word =>
        VerdictWords.Read(word) is null && NearestWord.Find(word, VerdictWords.All) == verdict);
}
