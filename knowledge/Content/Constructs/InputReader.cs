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
    public static JudgeInput? Read(InputNeed need, QuantityKind? kindOfReadings, string text, SensorCurve? curve) => need.Form switch
    {
        InputForm.Curve => curve is null ? null : new JudgeInput.Curve(curve),
        InputForm.Meter => MeterClass.TryParse(text, out MeterClass? meter) ? new JudgeInput.Meter(meter) : null,
        InputForm.Word => text.Length > 0 ? new JudgeInput.Word(text) : null,
        _ => ReadQuantity(text, need.Kind ?? kindOfReadings) is { } quantity ? new JudgeInput.Number(quantity) : null,
    };

    /// <summary>What the form is called, for the author of a page.</summary>
    public static string Wanted(InputNeed need, QuantityKind? kindOfReadings) => need.Form switch
    {
        InputForm.Curve => "a link to a sensor curve",
        InputForm.Meter => "a meter's limit of error, such as `1 % + 3 × 0.01 Ω`",
        InputForm.Word => "a word",
        _ when (need.Kind ?? kindOfReadings) is { } kind => $"a {KindWords.Of(kind)} with its unit",
        _ => "a number with its unit",
    };

    private static Quantity? ReadQuantity(string text, QuantityKind? kind)
    {
        bool isQuantity = kind is { } wanted
            ? QuantityText.TryParse(text, wanted, out Quantity? quantity)
            : QuantityText.TryParse(text, out quantity);
        return isQuantity ? quantity : null;
    }
}
