using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Exchange;

/// <summary>
/// Reads a matrix from CSV: what <see cref="MatrixWriter"/> writes, or a plain one, whose first column names the faults
/// and whose others are checks with P(the check fails | fault), mostly 0 and 1.
/// </summary>
public sealed class MatrixReader
{
    // How far from 1 a row of a check may sum.
    private const double RowTolerance = 1e-3;

    private static readonly ImmutableArray<string> PassFail = ["pass", "fail"];

    private readonly MatrixText table;
    private readonly ImmutableArray<string> head;
    private readonly ImmutableArray<ImmutableArray<string>> rows;

    private MatrixReader(MatrixText table) => (this.table, head, rows) = (table, table.Head, table.Rows);

    /// <exception cref="FormatException">
    /// It is not such a table; the message says where and what, a line for each slip.
    /// </exception>
    public static DependencyMatrix Read(string text) =>
        new MatrixReader(MatrixText.Read(text, "column", "fault")).ToMatrix();

    // Names first: nothing can be looked up by one that is there twice.
    private DependencyMatrix ToMatrix()
    {
        table.ThrowIfSlips();
        DependencyMatrix matrix = new([.. rows.Select(ToFault)], [.. ToSymptoms()], [.. ToChecks()]);
        table.ThrowIfSlips();
        return matrix;
    }

    private MatrixFault ToFault(ImmutableArray<string> row, int number)
    {
        int weight = head.IndexOf(MatrixWriter.Weight), repairs = head.IndexOf(MatrixWriter.Repairs);
        double weighs = weight < 0 ? 1 : Cell(number, weight, 1e9);
        if (weighs <= 0) table.Note($"row {number + 2}: the weight must be above 0");
        return new MatrixFault(
            row[0], weighs,
            repairs < 0
                ? []
                : [.. row[repairs].Split(' ', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)]);
    }

    private IEnumerable<MatrixSymptom> ToSymptoms() =>
        from column in Enumerable.Range(1, head.Length - 1)
        where head[column].StartsWith(MatrixWriter.Symptom, StringComparison.Ordinal)
        select new MatrixSymptom(head[column][MatrixWriter.Symptom.Length..], Enumerable.Range(0, rows.Length)
            .Where(row => rows[row][column].Trim().Length > 0 && Cell(row, column) > 0)
            .ToImmutableSortedDictionary(row => rows[row][0], row => Cell(row, column), StringComparer.Ordinal));

    private IEnumerable<MatrixCheck> ToChecks() => Enumerable.Range(1, head.Length - 1)
        .Where(column => !head[column].StartsWith(MatrixWriter.Symptom, StringComparison.Ordinal)
            && head[column] is not (MatrixWriter.Weight or MatrixWriter.Repairs))
        .GroupBy(column => CheckOf(head[column]).Check)
        .Select(columns => ToCheck(columns.Key, [.. columns]));

    private MatrixCheck ToCheck(string id, ImmutableArray<int> columns)
    {
        bool plain = CheckOf(head[columns[0]]).Outcome is null;
        ImmutableArray<string> outcomes = plain
            ? PassFail
            : [.. columns.Select(column => CheckOf(head[column]).Outcome!)];
        if (outcomes.Length < 2) table.Note($"check {id} has one outcome only");
        return new MatrixCheck(id, outcomes, Enumerable.Range(0, rows.Length).ToImmutableSortedDictionary(
            row => rows[row][0], row => plain ? Failing(Cell(row, columns[0])) : Shares(id, row, columns),
            StringComparer.Ordinal));
    }

    private ImmutableArray<double> Shares(string id, int row, ImmutableArray<int> columns)
    {
        ImmutableArray<double> shares = [.. columns.Select(column => Cell(row, column))];
        if (Math.Abs(shares.Sum() - 1) > RowTolerance)
            table.Note($"row {row + 2}: the outcomes of check {id} do not sum to 1");
        return shares;
    }

    private static ImmutableArray<double> Failing(double fails) => [1 - fails, fails];

    private static (string Check, string? Outcome) CheckOf(string name)
    {
        if (!name.StartsWith(MatrixWriter.Check, StringComparison.Ordinal)) return (name, null);
        int outcome = name.IndexOf(MatrixWriter.Outcome, StringComparison.Ordinal);
        return outcome < 0
            ? (name, null)
            : (name[MatrixWriter.Check.Length..outcome], name[(outcome + MatrixWriter.Outcome.Length)..]);
    }

    private double Cell(int row, int column, double most = 1) => table.Number(row, column, most);
}
