using System.Text.Json;
using System.Text.Json.Nodes;
using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Server.Commands.Asking;

/// <summary>Values of calculations in JSON: <c>{"value":1.2,"unit":"kohm"}</c>; the value may be a word, a flag or a
/// list.</summary>
internal static class CalculationJson
{
    /// <exception cref="RequestException">It has no value of a form that is known.</exception>
    public static CalculationValue Read(JsonProperty input)
    {
        if (input.Value.ValueKind != JsonValueKind.Object || !input.Value.TryGetProperty("value", out var value))
        {
            throw new RequestException($$"""input "{{input.Name}}" must be {"value", "unit"}""");
        }

        string unit = Request.OptionalText(input.Value, "unit") ?? "";
        return value.ValueKind switch
        {
            JsonValueKind.Number => Number(value.GetDouble(), unit),
            JsonValueKind.String => new CalculationValue.Text(value.GetString()!),
            JsonValueKind.True or JsonValueKind.False => new CalculationValue.Flag(value.GetBoolean()),
            JsonValueKind.Array => List(input.Name, [.. value.EnumerateArray()], unit),
            _ => throw new RequestException($"input \"{input.Name}\" has no value"),
        };
    }

    public static JsonObject Write(CalculationValue value) => value switch
    {
        CalculationValue.Number number => Pair(number.Quantity.Value, number.Quantity.Unit.Code),
        CalculationValue.Text text => Pair(text.Value, ""),
        CalculationValue.Flag flag => Pair(flag.Value, ""),
        CalculationValue.Numbers numbers =>
            Pair(new JsonArray([.. numbers.Values.Select(n => (JsonNode)n)]), numbers.Unit.Code),
        CalculationValue.Texts texts => Pair(new JsonArray([.. texts.Values.Select(t => (JsonNode)t)]), ""),
        _ => throw new ArgumentOutOfRangeException(nameof(value), value, "not an output"),
    };

    private static CalculationValue Number(double value, string unit) => Unit.TryParse(unit, out var known)
        ? new CalculationValue.Number(new Quantity(value, known))
        : new CalculationValue.Unknown(value, unit);

    private static CalculationValue List(string name, JsonElement[] values, string unit)
    {
        if (values.All(v => v.ValueKind == JsonValueKind.String))
            return new CalculationValue.Texts([.. values.Select(v => v.GetString()!)]);
        if (values.Any(v => v.ValueKind != JsonValueKind.Number))
            throw new RequestException($"input \"{name}\" mixes words and numbers");
        return Unit.TryParse(unit, out var known)
            ? new CalculationValue.Numbers([.. values.Select(v => v.GetDouble())], known)
            : new CalculationValue.Unknown(values.Length, unit);
    }

    private static JsonObject Pair(JsonNode value, string unit) => new() { ["value"] = value, ["unit"] = unit };
}
