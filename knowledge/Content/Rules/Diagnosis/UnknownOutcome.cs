using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Diagnosis;

/// <summary>
/// An outcome that the check does not have, in its likelihoods or as a sign of danger, or one without likelihoods.
/// </summary>
/// <example>Bad: <c>| Fault | home | lose |</c>. Good: <c>| Fault | home | loose |</c>.</example>
internal sealed class UnknownOutcome : IContentRule
{
    private static readonly string[] SignsOfDanger = ["stop", "stop-gas", "stop-wet", "stop-shock", "leave-off"];

    public string Name => "unknown-outcome";

    public string Meaning =>
        "An outcome that the check does not have, in its likelihoods or as a sign of danger, or one without "
            + "likelihoods.";

    public bool NeedsFrame => true;

    public RuleExample Bad { get; } = new("checks/fan-plug.md", """
        ## Likelihoods
        | Fault | home | ⟦lose⟧ |
        |---|---|---|
        | [Plug](../faults/fan-plug-loose.md) | never | always |
        | [Motor](../faults/fan-motor-failed.md) | 0.97 | 0.03 |
        | every other fault | always | never |
        """);

    public RuleExample Good { get; } = new("checks/fan-plug.md", """
        ## Likelihoods
        | Fault | home | loose |
        |---|---|---|
        | [Plug](../faults/fan-plug-loose.md) | never | always |
        | [Motor](../faults/fan-motor-failed.md) | 0.97 | 0.03 |
        | every other fault | always | never |
        """);

    public ImmutableArray<ExamplePair> More { get; } =
    [
        new ExamplePair(
            new RuleExample("checks/fan-plug.md", """
            ---
            kind: check
            id: fan-plug
            minutes: 3
            access: [isolated-open]
            who: technician
            stop: [⟦lose⟧]
            ---
            """),
            new RuleExample("checks/fan-plug.md", """
            ---
            kind: check
            id: fan-plug
            minutes: 3
            access: [isolated-open]
            who: technician
            stop: [loose]
            ---
            """)),
    ];

    public IEnumerable<Diagnostic> Check(Pages pages) => InLikelihoods(pages).Concat(InStop(pages));

    private IEnumerable<Diagnostic> InLikelihoods(Pages pages)
    {
        foreach (Page page in pages.OfKind(PageKind.Check))
        {
            if (LikelihoodTable.Of(page, pages) is not { } table || OutcomeTable.Of(page) is not { } outcomes)
            {
                continue;
            }

            string[] known = [.. outcomes.Rows.Select(row => row.Id.Text)];
            RichText[] strange = [.. table.Outcomes.Where(head => !known.Contains(head.Text))];
            foreach (RichText head in strange)
            {
                yield return page.Error(Name, head.Span, $"`{head.Text}` is not an outcome of this check",
                    NearestWord.HintOrListOfIds(head.Text, known));
            }

            // A misspelt head is the same fault as the outcome it leaves out.
            string? missing = known.Except(table.Outcomes.Select(head => head.Text)).FirstOrDefault();
            if (strange.Length == 0 && missing is not null)
            {
                yield return page.Error(Name, table.Table.Head.Span, $"the outcome `{missing}` has no likelihoods",
                    "add a column for it");
            }
        }
    }

    private IEnumerable<Diagnostic> InStop(Pages pages) =>
        from page in pages.OfKind(PageKind.Check)
        let outcomes = OutcomeTable.Of(page)
        where outcomes is not null
        let known = outcomes.Rows.Select(row => row.Id.Text).ToArray()
        from stop in SignsOfDanger.Select(page.Front!.Field).OfType<FrontMatterField>()
        from value in stop.Values
        where !known.Contains(value.Text)
        select page.Error(Name, value.Span, $"`{value.Text}` is not an outcome of this check",
            NearestWord.HintOrListOfIds(value.Text, known));
}
