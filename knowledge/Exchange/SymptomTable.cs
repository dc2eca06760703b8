using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Exchange;

/// <summary>Reads a table of symptoms against faults: a row for each symptom, a column for each fault, and in a cell how
/// often the fault shows the symptom, as a number, a share in per cent or a word of likelihood.</summary>
public static class SymptomTable
{
    // Values: the table of likelihood words that a new folder begins with.
    private static readonly ImmutableSortedDictionary<string, double> Words = new Dictionary<string, double>
    {
        ["always"] = 0.98, ["usually"] = 0.9, ["often"] = 0.7, ["sometimes"] = 0.3, ["seldom"] = 0.1, ["never"] = 0,
    }.ToImmutableSortedDictionary(StringComparer.Ordinal);

    /// <exception cref="FormatException">It is not such a table; the message says where and what.</exception>
    public static DependencyMatrix Read(string text)
    {
        MatrixText table = MatrixText.Read(text, "fault", "symptom");
        ImmutableArray<MatrixSymptom> symptoms = [.. Enumerable.Range(0, table.Rows.Length).Select(row => ToSymptom(table, row))];
        foreach (string fault in table.Head.Skip(1))
            if (!symptoms.Any(symptom => symptom.Causes.ContainsKey(fault))) throw new FormatException($"fault {fault} has no symptom");
        return new DependencyMatrix([.. table.Head.Skip(1).Select(fault => new MatrixFault(fault, 1, []))], symptoms, []);
    }

    private static MatrixSymptom ToSymptom(MatrixText table, int row)
    {
        var causes = Enumerable.Range(1, table.Head.Length - 1)
            .Select(column => (Fault: table.Head[column], Share: table.Number(row, column, words: Words))).Where(cause => cause.Share > 0)
            .ToImmutableSortedDictionary(cause => cause.Fault, cause => cause.Share, StringComparer.Ordinal);
        return causes.IsEmpty
            ? throw new FormatException($"row {row + 2}: symptom {table.Rows[row][0]} has no fault")
            : new MatrixSymptom(table.Rows[row][0], causes);
    }
}
