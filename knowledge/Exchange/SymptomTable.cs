using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Exchange;

/// <summary>
/// Reads a table of symptoms against faults: a row for each symptom, a column for each fault, and in a cell how
/// often the fault shows the symptom, as a number, a share in per cent or a word of likelihood.
/// </summary>
public static class SymptomTable
{
    // Values: the table of likelihood words that a new folder begins with.
    private static readonly ImmutableSortedDictionary<string, double> Words = new Dictionary<string, double>
    {
        ["always"] = 0.98, ["usually"] = 0.9, ["often"] = 0.7, ["sometimes"] = 0.3, ["seldom"] = 0.1, ["never"] = 0,
    }.ToImmutableSortedDictionary(StringComparer.Ordinal);

    /// <exception cref="FormatException">
    /// It is not such a table; the message says where and what, a line for each slip.
    /// </exception>
    public static DependencyMatrix Read(string text)
    {
        MatrixText table = MatrixText.Read(text, "fault", "symptom");
        double[][] shares = [.. Enumerable.Range(0, table.Rows.Length).Select(row => RowOf(table, row))];
        for (int row = 0; row < shares.Length; row++)
            if (table.Rows[row][0].Length > 0 && shares[row].All(share => share == 0))
                table.Note($"row {row + 2}: symptom {table.Rows[row][0]} has no fault");
        for (int column = 1; column < table.Head.Length; column++)
            if (table.Head[column].Length > 0 && shares.All(row => row[column - 1] == 0))
                table.Note($"fault {table.Head[column]} has no symptom");
        table.ThrowIfSlips();
        return new DependencyMatrix(
            [.. table.Head.Skip(1).Select(fault => new MatrixFault(fault, 1, []))],
            [.. shares.Select((row, number) => new MatrixSymptom(table.Rows[number][0], Causes(table, row)))], []);
    }

    private static double[] RowOf(MatrixText table, int row) =>
        [.. Enumerable.Range(1, table.Head.Length - 1).Select(column => table.Number(row, column, words: Words))];

    private static ImmutableSortedDictionary<string, double> Causes(MatrixText table, double[] row) => row
        .Select((share, place) => (Fault: table.Head[place + 1], Share: share)).Where(cause => cause.Share > 0)
        .ToImmutableSortedDictionary(cause => cause.Fault, cause => cause.Share, StringComparer.Ordinal);
}
