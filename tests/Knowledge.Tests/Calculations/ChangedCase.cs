using System.Collections.Immutable;
using System.Globalization;
using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Tests.Calculations;

/// <summary>
/// A case of the reference files with some of its inputs changed: <c>R1=0; R2=0</c>, in the units of the case.
/// </summary>
/// <remarks>
/// An input that the case lacks needs its unit: <c>u3=1 1</c>. A list stands in brackets: <c>[1, 2]</c>. An input
/// without a value is taken out: <c>R25=</c>.
/// </remarks>
internal static class ChangedCase
{
    public static CalculationResult Run(string id, string changes)
    {
        ImmutableSortedDictionary<string, CalculationValue> inputs = CheckCase.All[id].AsInputs();
        foreach (string[] change in changes.Split(';',
            StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
            .Select(change => change.Split('=', 2, StringSplitOptions.TrimEntries)))
            inputs = change[1].Length == 0 ? inputs.Remove(change[0])
                : inputs.SetItem(change[0], Value(inputs.GetValueOrDefault(change[0]), change[1]));
        return CalculationCatalogue.Run(new CalculationRequest(id, inputs));
    }

    /// <summary>An output of an answer, in the unit it comes in.</summary>
    public static CalculationValue Output(string id, string changes, string name)
    {
        CalculationResult result = Run(id, changes);
        Assert.True(result is CalculationResult.Answer, $"{id}, {changes}: {result}");
        return ((CalculationResult.Answer)result).Values.Single(term => term.Symbol == name).Value;
    }

    private static CalculationValue Value(CalculationValue? before, string text)
    {
        if (text.StartsWith('['))
        {
            string[] items =
                text[1..^1].Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
            return before is CalculationValue.Numbers list
                ? list with { Values = [.. items.Select(item => double.Parse(item, CultureInfo.InvariantCulture))] }
                : new CalculationValue.Texts([.. items]);
        }

        string[] parts = text.Split(' ', 2);
        if (before is CalculationValue.Text
            || !double.TryParse(parts[0], CultureInfo.InvariantCulture, out double number))
            return new CalculationValue.Text(text);
        Unit? unit = parts.Length == 2 ? Known(parts[1]) : (before as CalculationValue.Number)?.Quantity.Unit;
        return new CalculationValue.Number(new Quantity(number, unit ?? Units.One));
    }

    private static Unit Known(string code) =>
        Unit.TryParse(code == "1" ? "" : code, out Unit? unit) ? unit : throw new FormatException(code);
}
