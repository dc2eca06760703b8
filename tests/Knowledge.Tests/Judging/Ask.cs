using System.Collections.Immutable;
using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Calculations.Doubt;
using DxAssistant.Knowledge.Calculations.Sensors;
using DxAssistant.Knowledge.Judging;
using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Knowledge.Tests.Judging;

/// <summary>Asks a judge as a page would: inputs and readings as text.</summary>
internal static class Ask
{
    public const string Open = "open";
    public const string Short = "short";

    /// <summary>Inputs as <c>name = value; name = value</c>; readings as <c>1.02 Ω</c>, <c>open</c> or
    /// <c>short</c>.</summary>
    public static Judgement Judge(string name, string inputs, params string[] readings) =>
        JudgeCatalogue.All[name].Judge(Request(name, inputs, readings));

    public static JudgeRequest Request(string name, string inputs, params string[] readings) => new(
        [.. readings.Select((text, i) => Read(text, JudgeCatalogue.All[name].Readings[i]))],
        Inputs(JudgeCatalogue.All[name], inputs));

    public static ImmutableSortedDictionary<string, JudgeInput> Inputs(IJudge judge, string text) => text
        .Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
        .Select(part => part.Split('=', 2, StringSplitOptions.TrimEntries))
        .ToImmutableSortedDictionary(pair => pair[0], pair => Input(judge, pair[0], pair[1]), StringComparer.Ordinal);

    private static JudgeInput Input(IJudge judge, string name, string text) =>
        judge.Inputs.First(need => need.Name == name).Form switch
    {
        InputForm.Curve => new JudgeInput.Curve(PublishedCurves.Get(text, Resistance.FromOhms(10_000))),
        InputForm.Meter => MeterClass.TryParse(text, out var meter) ? new JudgeInput.Meter(meter)
            : throw new FormatException(text),
        InputForm.Refrigerant => new JudgeInput.Word(text),
        _ => QuantityText.TryParse(text, out var quantity) ? new JudgeInput.Number(quantity)
            : throw new FormatException(text),
    };

    private static Reading Read(string text, ReadingNeed need)
    {
        if (text is Open or Short)
            return new Reading(null, text == Open ? ReadingState.OpenCircuit : ReadingState.ShortCircuit, 0,
                need.Kind == QuantityKind.Voltage ? Units.Volt : Units.Ohm, text);
        var parts = text.Split(':', 2, StringSplitOptions.TrimEntries);
        return QuantityText.TryParse(parts[^1], out var quantity)
            ? Reading.Of(quantity.Value, quantity.Unit, parts.Length == 2 ? parts[0] : null)
            : throw new FormatException(text);
    }
}
