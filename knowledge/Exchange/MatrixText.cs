using System.Collections.Immutable;
using System.Globalization;

namespace DxAssistant.Knowledge.Exchange;

/// <summary>
/// A table of values as a spreadsheet saves it: heads, rows of the same length, names without stray blanks.
/// </summary>
/// <remarks>
/// Rows are counted from 1 as a spreadsheet counts them, the heads included, a row with a line break in a field once.
/// </remarks>
internal sealed class MatrixText
{
    private readonly bool hasDecimalCommas;
    private readonly List<string> slips = [];

    private MatrixText(ImmutableArray<string> head, ImmutableArray<ImmutableArray<string>> rows,
        bool hasDecimalCommas) =>
        (Head, Rows, this.hasDecimalCommas) = (head, rows, hasDecimalCommas);

    public ImmutableArray<string> Head { get; }

    public ImmutableArray<ImmutableArray<string>> Rows { get; }

    /// <summary>The table, with the slips in its names kept for <see cref="ThrowIfSlips"/>.</summary>
    /// <exception cref="FormatException">
    /// It is no table; the message says where, a line for each row of another length.
    /// </exception>
    public static MatrixText Read(string text, string columns, string rows)
    {
        if (text.Contains('\uFFFD')) throw new FormatException("not all of it is UTF-8: save it as CSV in UTF-8");
        string plain = text.TrimStart('\uFEFF');
        ImmutableArray<ImmutableArray<string>> all =
            [.. CommaSeparated.Rows(plain).Select(row => row.Select(Trimmed).ToImmutableArray())];
        if (all.Length < 2) throw new FormatException("needs a row of heads and a row for each " + rows);
        string[] ragged = [.. Enumerable.Range(1, all.Length - 1).Where(row => all[row].Length != all[0].Length)
            .Select(row => $"row {row + 1} has {all[row].Length} fields, the heads are {all[0].Length}")];
        if (ragged.Length > 0) throw new FormatException(string.Join('\n', ragged));
        var table = new MatrixText(all[0], all[1..], CommaSeparated.MarkOf(plain) != ',');
        table.NoteTwice(all[0].Skip(1), columns);
        table.NoteTwice(all.Skip(1).Select(row => row[0]), rows);
        return table;
    }

    /// <summary>Keeps a slip.</summary>
    public void Note(string slip) => slips.Add(slip);

    /// <exception cref="FormatException">There were slips; the message has a line for each.</exception>
    public void ThrowIfSlips()
    {
        if (slips.Count > 0) throw new FormatException(string.Join('\n', slips));
    }

    /// <summary>
    /// The number in a cell, 0 when it is empty; a decimal comma where commas do not part the fields.
    /// </summary>
    /// <param name="row">From 0, without the heads.</param>
    /// <param name="words">Words that stand for numbers; null where none may.</param>
    /// <returns>NaN, and a slip noted, when there is no number from 0 to <paramref name="most"/>.</returns>
    public double Number(int row, int column, double most = 1, IReadOnlyDictionary<string, double>? words = null)
    {
        string cell = Rows[row][column];
        if (cell.Length == 0) return 0;
        if (words is not null && words.TryGetValue(cell.ToLowerInvariant(), out double meant)) return meant;
        bool isShare = words is not null && cell.EndsWith('%');
        string digits = (hasDecimalCommas ? cell.Replace(',', '.') : cell).TrimEnd('%', ' ');
        if (double.TryParse(isShare
            || !cell.EndsWith('%') ? digits : "", NumberStyles.Float, CultureInfo.InvariantCulture, out double value)
            && (isShare ? value / 100 : value) is var number && number >= 0 && number <= most) return number;
        Note(string.Create(CultureInfo.InvariantCulture,
            $"row {row + 2}, column {Head[column]}: {cell} is not a number from 0 to {most}{(words is null ? "" : ", nor " + string.Join(", ", words.Keys))}"));
        return double.NaN;
    }

    // A line break in a name is one blank.
    private static string Trimmed(string field) =>
        string.Join(' ', field.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    private void NoteTwice(IEnumerable<string> names, string kind)
    {
        HashSet<string> seen = new(StringComparer.OrdinalIgnoreCase);
        foreach (string name in names)
            if (name.Length == 0) Note($"a {kind} has no name");
            else if (!seen.Add(name)) Note($"{kind} {name} is there twice");
    }
}
