using System.Collections.Immutable;
using System.Text.Json;
using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Tests.Calculations;

/// <summary>One value of a case file: <c>{"value": …, "unit": …, "tolerance": …}</c>.</summary>
internal sealed record CaseValue(JsonElement Value, string Unit, double Tolerance)
{
    public static CaseValue From(JsonElement element) => new(
        element.GetProperty("value"), element.GetProperty("unit").GetString()!,
        element.TryGetProperty("tolerance", out var tolerance) ? tolerance.GetDouble() : 0);

    public CalculationValue AsInput() => Value.ValueKind switch
    {
        JsonValueKind.String => new CalculationValue.Text(Value.GetString()!),
        JsonValueKind.True or JsonValueKind.False => new CalculationValue.Flag(Value.GetBoolean()),
        JsonValueKind.Array when Value.EnumerateArray().All(item => item.ValueKind == JsonValueKind.Number) =>
            new CalculationValue.Numbers([.. Value.EnumerateArray().Select(item => item.GetDouble())], Known(Unit)),
        JsonValueKind.Array => new CalculationValue.Texts(
            [.. Value.EnumerateArray().Select(item => item.GetString()!)]),
        _ => Knowledge.Quantities.Unit.TryParse(Unit, out var unit)
            ? new CalculationValue.Number(new Quantity(Value.GetDouble(), unit))
            : new CalculationValue.Unknown(Value.GetDouble(), Unit),
    };

    private static Unit Known(string code) => Knowledge.Quantities.Unit.TryParse(code, out var unit) ? unit
        : throw new InvalidDataException(code);
}
