using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules;

/// <summary>Likelihoods of an outcome that the check does not have, or an outcome without likelihoods.</summary>
/// <example>Bad: <c>| Fault | home | lose |</c>. Good: <c>| Fault | home | loose |</c>.</example>
internal sealed class UnknownOutcome : IContentRule
{
    public string Name => "unknown-outcome";

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

    public IEnumerable<Diagnostic> Check(Pages pages)
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
                    NearestWord.HintOrList(head.Text, known));
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
}
