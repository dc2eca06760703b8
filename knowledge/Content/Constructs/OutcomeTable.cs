using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Constructs;

/// <summary>The outcomes of a check.</summary>
internal sealed record OutcomeTable(PipeTable Table, ImmutableArray<OutcomeRow> Rows)
{
    /// <summary>The heads that the table of a check must have.</summary>
    public static ImmutableArray<string> Heads(bool withCalculation) =>
        withCalculation ? ["Outcome", "Answer", "Verdict"] : ["Outcome", "Answer"];

    /// <summary>The table of a check's page, or null when it has none with the right heads.</summary>
    public static OutcomeTable? Of(Page check)
    {
        PipeTable? table = check.Section("Outcomes")?.Table;
        bool fits = table is not null
            && (HasHeads(table, Heads(false)) || HasHeads(table, Heads(true)));
        return fits
            ? new OutcomeTable(table!, [.. table!.Rows.Where(row => row.Cells.Length >= 2).Select(ReadRow)])
            : null;
    }

    public static bool HasHeads(PipeTable table, ImmutableArray<string> heads) =>
        table.Head.Cells.Select(cell => cell.Text).SequenceEqual(heads);

    private static OutcomeRow ReadRow(TableRow row) => new(row.Cells[0], row.Cells[1], row.Cell(2));
}
