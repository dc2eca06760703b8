using System.Collections.Immutable;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations.Sensors;

/// <summary>Published sensor curves, by name.</summary>
internal static class CurveCalculations
{
    public static ImmutableArray<Calculation> All =>
    [
        new("ntc-table", "Resistance of a thermistor from its table",
            "ln R straight against 1/T between the lines of the table",
            new Citation("Published R/T tables of thermistors", "curves AT-10k-3435, 8016, J-10k"),
            [CalculationInput.Word("curve"), CalculationInput.Positive("R25", Units.Ohm).Within(1e-3, 1e9).Optional(),
                CalculationInput.Temperature("T")],
            [new("R", Units.Ohm)], FindResistance),
    ];

    private static CalculationResult FindResistance(Given given)
    {
        if (PublishedCurves.NameOf(given.Word("curve")) is not { } name)
            return Given.OutOfRange($"curve is covered for {string.Join(", ", PublishedCurves.Names)}");
        if (PublishedCurves.NeedsRoomResistance(name) && !given.Has("R25"))
            return Given.Invalid("R25 is missing");
        var curve = PublishedCurves.Get(name, Resistance.FromOhms(given.Or("R25", 10_000)));
        return curve.TryResistance(given.Temperature("T"), out var resistance)
            ? given.Answer(resistance)
            : Given.OutOfRange(
                $"T is covered for {NumberText.Of(curve.Coldest.Celsius)} to {NumberText.Of(curve.Hottest.Celsius)} °C");
    }
}
