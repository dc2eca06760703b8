using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Constructs;

/// <summary>Reads the table of what earlier work on a unit does to the odds.</summary>
internal static class EarlierTable
{
    public const string Heading = "Earlier work";
    public const string Within = "Within days";
    public const string Same = "Same part again";
    public const string Left = "Left by the work";

    /// <summary>The rows, the shortest time first; a row that cannot be read is left out.</summary>
    public static ImmutableArray<EarlierOdds> Read(Page words)
    {
        if (words.Section(Heading)?.Table is not { } table) return [];
        var place = new PagePlace(words.Path, Heading);
        return
        [
            .. table.Rows.Select(
                row => (Days: Cell(row, table, Within), Same: Cell(row, table, Same), Left: Cell(row, table, Left)))
                .Where(row => row is { Days: not null, Same: not null, Left: not null })
                .Select(row => new EarlierOdds((int)row.Days!.Value, row.Same!.Value, row.Left!.Value, place))
                .OrderBy(row => row.Within),
        ];
    }

    private static double? Cell(TableRow row, PipeTable table, string head) =>
        Number.Read(row.Cell(table.Column(head))?.Text);
}
