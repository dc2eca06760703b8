using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Constructs;

/// <summary>The likelihoods of a check: a row a fault, a column an outcome.</summary>
/// <param name="Outcomes">The heads after the first.</param>
internal sealed record LikelihoodTable(
    PipeTable Table, ImmutableArray<RichText> Outcomes, ImmutableArray<LikelihoodRow> Rows)
{
    /// <summary>What the row of all faults that are not listed is called.</summary>
    public const string EveryOtherFault = "every other fault";

    /// <summary>The rows whose numbers can be used.</summary>
    public IEnumerable<LikelihoodRow> GoodRows => Rows.Where(row =>
        row.Readable && row.Written.Length == Outcomes.Length && !row.Written.IsEmpty && row.SumsToOne);

    public LikelihoodRow? EveryOther => Rows.FirstOrDefault(row => row.IsEveryOther);

    /// <summary>The table of a check's page, or null when it has none.</summary>
    public static LikelihoodTable? Of(Page check, Pages pages) =>
        check.Section("Likelihoods")?.Table is { } table && table.Head.Cells.Length > 0
            ? new LikelihoodTable(table, table.Head.Cells[1..],
                [.. table.Rows.Select(row => ReadRow(check, pages, row))])
            : null;

    private static LikelihoodRow ReadRow(Page check, Pages pages, TableRow row)
    {
        RichText? head = row.Cell(0);
        ImmutableArray<RichText> cells = row.Cells.IsEmpty ? [] : row.Cells[1..];
        return new LikelihoodRow(
            row,
            pages.Target(check, head?.Link, PageKind.Fault),
            head?.Text == EveryOtherFault,
            [.. cells.Select(cell => pages.Likelihood(cell.Text))],
            cells.All(cell => cell.IsEmpty || pages.Likelihood(cell.Text) is not null));
    }
}
