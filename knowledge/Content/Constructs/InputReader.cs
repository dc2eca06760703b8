using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Judging;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Content.Constructs;

/// <summary>Reads an input of a calculation as a page or a series gives it.</summary>
internal static class InputReader
{
    /// <summary>The input, or null when the text is not of the wanted form.</summary>
    /// <param name="kindOfReadings">The kind of the readings, for inputs that are of the same kind.</param>
    /// <param name="curve">The curve that the text links to, or null.</param>
    public static JudgeInput? Read(InputNeed need, QuantityKind? kindOfReadings, string text, SensorCurve? curve) =>
        need.Form switch
    {
        InputForm.Curve => curve is null ? null : new JudgeInput.Curve(curve),
        InputForm.Meter => ReadMeter(text, kindOfReadings) is { } meter ? new JudgeInput.Meter(meter) : null,
        InputForm.Word => text.Length > 0 ? new JudgeInput.Word(text) : null,
        _ => ReadQuantity(text, need.Kind ?? kindOfReadings) is { } quantity ? new JudgeInput.Number(quantity) : null,
    };

    /// <summary>What the form is called, for the author of a page.</summary>
    public static string Wanted(InputNeed need, QuantityKind? kindOfReadings) => need.Form switch
    {
        InputForm.Curve => "a link to a sensor curve",
        InputForm.Meter when kindOfReadings is { } read =>
            $"what a meter's maker promises for a {KindWords.Of(read)}, such as `1 % + 3 × 0.01 Ω` or `± 1 K`",
        InputForm.Meter => "what a meter's maker promises, such as `1 % + 3 × 0.01 Ω` or `± 1 K`",
        InputForm.Word => "a word",
        _ when (need.Kind ?? kindOfReadings) is { } kind => $"a {KindWords.Of(kind)} with its unit",
        _ => "a number with its unit",
    };

    // Counts of the last digit must be of what is read; of a temperature or pressure they are a difference.
    private static MeterClass? ReadMeter(string text, QuantityKind? kind)
    {
        if (!MeterClass.TryParse(text, out MeterClass? meter))
        {
            return null;
        }

        QuantityKind step = kind switch
        {
            QuantityKind.Temperature => QuantityKind.TemperatureDifference,
            QuantityKind.GaugePressure or QuantityKind.AbsolutePressure => QuantityKind.Pressure,
            { } other => other,
            null => meter.Resolution.Kind,
        };
        bool fits = meter.Counts == 0 || meter.Resolution.Kind == step || meter.Resolution.Kind == kind;
        return fits ? meter : null;
    }

    private static Quantity? ReadQuantity(string text, QuantityKind? kind)
    {
        bool isQuantity = kind is { } wanted
            ? QuantityText.TryParse(text, wanted, out Quantity? quantity)
            : QuantityText.TryParse(text, out quantity);
        return isQuantity ? quantity : null;
    }
}
