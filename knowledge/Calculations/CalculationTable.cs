using System.Text;

namespace DxAssistant.Knowledge.Calculations;

/// <summary>The list of all calculations as a Markdown table, for the developers' pages.</summary>
public static class CalculationTable
{
    /// <summary>The table; the same bytes on every system, lines end in a line feed.</summary>
    public static string Text()
    {
        var text =
            new StringBuilder("| calculation | what | formula | in | out | source |\n|---|---|---|---|---|---|\n");
        foreach (var calculation in CalculationCatalogue.All.Values)
            text.Append("| ").AppendJoin(" | ", Cells(calculation).Select(Escape)).Append(" |\n");
        return text.ToString();
    }

    private static IEnumerable<string> Cells(Calculation calculation) =>
    [
        $"`{calculation.Name}`", calculation.Title, calculation.Formula,
        string.Join(", ", calculation.Inputs.Select(In)),
        string.Join(", ", calculation.Outputs.Select(Out)), calculation.Source.ToString(),
    ];

    private static string In(CalculationInput input)
    {
        var unit = input.Unit?.Symbol is { Length: > 0 } symbol ? $" [{symbol}]" : "";
        var words = input.Choices.Length > 0 ? $" ({string.Join(" or ", input.Choices)})" : "";
        return input.Name + unit + words + (input.Required ? "" : " (optional)");
    }

    private static string Out(CalculationOutput output) =>
        output.Name + (output.Follows is { } name
            ? $" [as {name}]" : output.Unit?.Symbol is { Length: > 0 } symbol ? $" [{symbol}]" : "");

    private static string Escape(string cell) => cell.Replace("|", "\\|", StringComparison.Ordinal);
}
