using System.Collections.Immutable;
using System.Globalization;

namespace DxAssistant.Knowledge.Exchange;

/// <summary>A table of values as a spreadsheet saves it: heads, rows of the same length, names without stray blanks.</summary>
/// <remarks>Rows are counted from 1 as a spreadsheet counts them, the heads included, a row with a line break in a field once.</remarks>
internal sealed class MatrixText
{
    private readonly bool hasDecimalCommas;

    private MatrixText(ImmutableArray<string> head, ImmutableArray<ImmutableArray<string>> rows, bool hasDecimalCommas) =>
        (Head, Rows, this.hasDecimalCommas) = (head, rows, hasDecimalCommas);

    public ImmutableArray<string> Head { get; }

    public ImmutableArray<ImmutableArray<string>> Rows { get; }

    /// <exception cref="FormatException">It is no table, or two columns or rows have one name; the message says where.</exception>
    public static MatrixText Read(string text, string columns, string rows)
    {
        if (text.Contains('\uFFFD')) throw new FormatException("not all of it is UTF-8: save it as CSV in UTF-8");
        string plain = text.TrimStart('\uFEFF');
        ImmutableArray<ImmutableArray<string>> all = [.. CommaSeparated.Rows(plain).Select(row => row.Select(Trimmed).ToImmutableArray())];
        if (all.Length < 2) throw new FormatException("needs a row of heads and a row for each " + rows);
        for (int row = 1; row < all.Length; row++)
            if (all[row].Length != all[0].Length) throw new FormatException($"row {row + 1} has {all[row].Length} fields, the heads are {all[0].Length}");
        RefuseTwice(all[0].Skip(1), columns);
        RefuseTwice(all.Skip(1).Select(row => row[0]), rows);
        return new MatrixText(all[0], all[1..], CommaSeparated.MarkOf(plain) != ',');
    }

    /// <summary>The number in a cell, 0 when it is empty; a decimal comma where commas do not part the fields.</summary>
    /// <param name="row">From 0, without the heads.</param>
    /// <param name="words">Words that stand for numbers; null where none may.</param>
    /// <exception cref="FormatException">There is no number from 0 to <paramref name="most"/>.</exception>
    public double Number(int row, int column, double most = 1, IReadOnlyDictionary<string, double>? words = null)
    {
        string cell = Rows[row][column];
        if (cell.Length == 0) return 0;
        if (words is not null && words.TryGetValue(cell.ToLowerInvariant(), out double meant)) return meant;
        bool isShare = words is not null && cell.EndsWith('%');
        string digits = (hasDecimalCommas ? cell.Replace(',', '.') : cell).TrimEnd('%', ' ');
        return double.TryParse(isShare || !cell.EndsWith('%') ? digits : "", NumberStyles.Float, CultureInfo.InvariantCulture, out double value)
            && (isShare ? value / 100 : value) is var number && number >= 0 && number <= most
            ? number
            : throw new FormatException(string.Create(CultureInfo.InvariantCulture,
                $"row {row + 2}, column {Head[column]}: {cell} is not a number from 0 to {most}{(words is null ? "" : ", nor " + string.Join(", ", words.Keys))}"));
    }

    // A line break in a name is one blank.
    private static string Trimmed(string field) => string.Join(' ', field.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    private static void RefuseTwice(IEnumerable<string> names, string kind)
    {
        HashSet<string> seen = new(StringComparer.OrdinalIgnoreCase);
        foreach (string name in names)
            if (name.Length == 0) throw new FormatException($"a {kind} has no name");
            else if (!seen.Add(name)) throw new FormatException($"{kind} {name} is there twice");
    }
}
