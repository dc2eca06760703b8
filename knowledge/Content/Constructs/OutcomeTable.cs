using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Constructs;

/// <summary>The outcomes of a check.</summary>
internal sealed record OutcomeTable(PipeTable Table, ImmutableArray<OutcomeRow> Rows)
{
    private const string SaidAs = "Said as";

    /// <summary>The heads that the table of a check must have; <c>Said as</c> may follow them.</summary>
    public static ImmutableArray<string> Heads(bool withCalculation) =>
        withCalculation ? ["Outcome", "Answer", "Verdict"] : ["Outcome", "Answer"];

    /// <summary>The table of a check's page, or null when it has none with the right heads.</summary>
    public static OutcomeTable? Of(Page check)
    {
        PipeTable? table = check.Section("Outcomes")?.Table;
        bool fits = table is not null
            && (HasHeads(table, Heads(false)) || HasHeads(table, Heads(true)));
        return fits
            ? new OutcomeTable(table!,
                [.. table!.Rows.Where(row => row.Cells.Length >= 2).Select(row => ReadRow(table, row))])
            : null;
    }

    /// <summary>True when the heads of a table are these, with or without <c>Said as</c> after them.</summary>
    public static bool HasHeads(PipeTable table, ImmutableArray<string> heads)
    {
        IEnumerable<string> written = table.Head.Cells.Select(cell => cell.Text);
        return written.SequenceEqual(heads) || written.SequenceEqual([.. heads, SaidAs]);
    }

    private static OutcomeRow ReadRow(PipeTable table, TableRow row) => new(
        row.Cells[0], row.Cells[1], CellUnder(table, row, "Verdict"), CellUnder(table, row, SaidAs));

    private static RichText? CellUnder(PipeTable table, TableRow row, string head) =>
        table.Head.Cells.ToList().FindIndex(cell => cell.Text == head) is >= 0 and int place ? row.Cell(place) : null;
}
