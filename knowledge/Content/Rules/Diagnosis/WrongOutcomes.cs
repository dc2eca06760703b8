using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Rules.Calculating;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Diagnosis;

/// <summary>Outcomes without the right heads, with an empty cell, with an id that is none, or fewer than two.</summary>
/// <example>Bad: <c>one outcome</c>. Good: <c>two outcomes</c>.</example>
internal sealed class WrongOutcomes : IContentRule
{
    public string Name => "wrong-outcomes";

    public string Meaning =>
        "Outcomes without the right heads, with an empty cell, with an id that is none, or fewer than two.";

    public bool NeedsFrame => true;

    public RuleExample Bad { get; } = new("checks/fan-plug.md", """
        ## ⟦Outcomes⟧
        | Outcome | Answer |
        |---|---|
        | home | It is home |

        ## Likelihoods
        | Fault | home |
        |---|---|
        | [Plug](../faults/fan-plug-loose.md) | always |
        | [Motor](../faults/fan-motor-failed.md) | always |
        | every other fault | 0.97 |
        """);

    public RuleExample Good { get; } = new("checks/fan-plug.md", """
        ## Outcomes
        | Outcome | Answer |
        |---|---|
        | home | It is home |
        | loose | It was loose |
        """);

    public IEnumerable<Diagnostic> Check(Pages pages) =>
        pages.OfKind(PageKind.Check).Where(page => page.Section("Outcomes")?.Table is not null)
            .SelectMany(page => Check(page, pages));

    private IEnumerable<Diagnostic> Check(Page page, Pages pages)
    {
        PipeTable table = page.Section("Outcomes")!.Table!;
        ImmutableArray<string> heads = OutcomeTable.Heads(page.Front!.Field("calculation") is not null);
        if (!OutcomeTable.HasHeads(table, heads))
        {
            // ReadingsDoNotFit reports readings without a calculation.
            if (heads.Length == 2 && page.Section("Readings") is not null)
            {
                yield break;
            }

            yield return page.Error(Name, table.Head.Span, "the heads of the table are not those of the section",
                $"write `| {string.Join(" | ", heads)} |`; a check has verdicts when it names a calculation");
            yield break;
        }

        ImmutableArray<OutcomeRow> rows = OutcomeTable.Of(page)!.Rows;
        // An outcome that has likelihoods is UnknownOutcome's.
        if (rows.Length < 2 && LikelihoodTable.Of(page, pages) is not { Outcomes.Length: >= 2 })
        {
            yield return page.Error(Name, page.Section("Outcomes")!.Heading.Span, "a check needs two outcomes or more");
        }

        foreach (OutcomeRow row in rows)
        {
            if (!Id.IsId(row.Id.Text))
            {
                yield return page.Error(Name, row.Id.Span, $"`{row.Id.Text}` is not an id",
                    OddCharacter.Said(Id.Help, row.Id.Text));
            }

            foreach (RichText cell in new[] { row.Answer, row.Verdicts }.OfType<RichText>().Where(cell => cell.IsEmpty))
            {
                yield return page.Error(Name, cell.Span, $"the outcome `{row.Id.Text}` has an empty cell");
            }
        }
    }
}
