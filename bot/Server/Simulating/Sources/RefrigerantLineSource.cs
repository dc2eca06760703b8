using System.Collections.Immutable;
using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Calculations.Air;
using DxAssistant.Knowledge.Calculations.Circuit;
using DxAssistant.Knowledge.Judging;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Server.Simulating.Sources;

/// <summary>A gauge and a thermometer on one line: the pressure of the saturation temperature, and a line warmer or
/// colder than that.</summary>
internal sealed class RefrigerantLineSource : IReadingSource
{
    private readonly Func<ReadingSetup, double, (double Saturation, double Line)> _celsius;

    private RefrigerantLineSource(
        string calculation, Func<ReadingSetup, double, (double Saturation, double Line)> celsius) =>
        (Calculation, _celsius) = (calculation, celsius);

    public static ImmutableArray<RefrigerantLineSource> All =>
    [
        new("superheat", (setup, kelvins) => From(setup.Between(3, 9), 1, kelvins)),
        new("subcooling", (setup, kelvins) => From(setup.Surroundings.Outdoor * 0.5 + 22, -1, kelvins)),
        new("saturation-split", (setup, kelvins) => (AirOf(setup) + kelvins, AirOf(setup))),
    ];

    public string Calculation { get; }

    public ImmutableArray<TrueReading> Draw(VerdictKind condition, ReadingSetup setup)
    {
        if (Difference(condition, setup) is not { } kelvins) return [];
        (double saturation, double line) = _celsius(setup, kelvins);
        return Refrigerant.Find(setup.Word("refrigerant")) is { Dew: { } dew } held
            && Pressure(held.Bubble, dew, saturation) is { } absolute
            ? [TrueReading.Of(absolute - AirPressure(setup)), TrueReading.Of(line)]
            : [];
    }

    private static double? Difference(VerdictKind condition, ReadingSetup setup)
    {
        double low = setup.Given("low"), high = setup.Given("high"), width = Math.Max(high - low, 4);
        return condition switch
        {
            VerdictKind.Within => setup.Inside(low, high),
            VerdictKind.Low => setup.Below(low, width),
            VerdictKind.High => setup.Above(high, width),
            _ => null,
        };
    }

    private double? Pressure(SaturationCurve? bubble, SaturationCurve dew, double celsius)
    {
        var at = Temperature.FromCelsius(celsius);
        SaturationCurve other = bubble ?? dew;
        if (!dew.TryPressure(at, out AbsolutePressure low) || !other.TryPressure(at, out AbsolutePressure high))
            return null;
        return Calculation switch
        {
            "superheat" => low.Pascals,
            "subcooling" => high.Pascals,
            _ => (low.Pascals + high.Pascals) / 2,
        };
    }

    private static (double Saturation, double Line) From(double saturation, int sign, double kelvins) =>
        (saturation, saturation + sign * kelvins);

    // The coil gives its heat to the air outdoors, or takes it from the room.
    private static double AirOf(ReadingSetup setup) =>
        setup.Given("low") < 0 ? setup.Surroundings.Indoor : Math.Max(setup.Surroundings.Outdoor, 15);

    private static double AirPressure(ReadingSetup setup) =>
        StandardAtmosphere.PressureAt(setup.Si("altitude") ?? 0).Pascals;
}
