using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Calculations.Circuit;
using DxAssistant.Knowledge.Calculations.Doubt;
using DxAssistant.Knowledge.Judging;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Content.Constructs;

/// <summary>Reads an input of a calculation as a page or a series gives it.</summary>
internal static class InputReader
{
    /// <summary>The input, or null when the text is not of the wanted form.</summary>
    /// <param name="kindOfReadings">The kind of the readings, for inputs that are of the same kind.</param>
    /// <param name="linked">What the text links to.</param>
    public static JudgeInput? Read(InputNeed need, QuantityKind? kindOfReadings, string text, Linked linked) =>
        need.Form switch
    {
        InputForm.Curve => linked.Curve is { } curve ? new JudgeInput.Curve(curve) : null,
        InputForm.Meter => (linked.Meter ?? ReadMeter(text, kindOfReadings)) is { } meter
            && (kindOfReadings is not { } kind || meter.Reads(kind)) ? new JudgeInput.Meter(meter) : null,
        InputForm.Refrigerant => Refrigerant.FindCurved(text) is not null ? new JudgeInput.Word(text) : null,
        _ =>
            (linked.Meter is { } limited
                ? LimitOf(limited, need.Kind)
                : ReadQuantity(text, need.Kind ?? kindOfReadings))
            is { } quantity ? new JudgeInput.Number(quantity) : null,
    };

    /// <summary>What the form is called, for the author of a page.</summary>
    public static string Wanted(InputNeed need, QuantityKind? kindOfReadings) => need.Form switch
    {
        InputForm.Curve => "a link to a sensor curve",
        InputForm.Meter when kindOfReadings is { } read =>
            $"what a meter's maker promises for a {KindWords.Of(read)}: a link to a meter that reads it, `1 % + 3 × 0.01 Ω` or `± 1 K`",
        InputForm.Meter => "what a meter's maker promises, such as `1 % + 3 × 0.01 Ω` or `± 1 K`",
        InputForm.Refrigerant => "a refrigerant whose saturation curve is held",
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

        return kind is not { } read || MeterReader.Fits(meter, read) ? meter : null;
    }

    // A thermometer or gauge: one limit of error that holds over the whole range.
    private static Quantity? LimitOf(MeterClass meter, QuantityKind? wanted) => meter.Ranges
        .Where(range => range.Promise is { Percent: 0, Counts: 1 } && range.Promise.Resolution.Kind == wanted)
        .Select(range => range.Promise.Resolution).FirstOrDefault();

    private static Quantity? ReadQuantity(string text, QuantityKind? kind)
    {
        bool isQuantity = kind is { } wanted
            ? QuantityText.TryParse(text, wanted, out Quantity? quantity)
            : QuantityText.TryParse(text, out quantity);
        return isQuantity ? quantity : null;
    }
}
