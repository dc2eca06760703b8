using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Calculations.Circuit;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Judging;

/// <summary>Where a gauge stands on a saturation curve.</summary>
/// <param name="Celsius">Saturation temperature, or the end of the curve that was passed.</param>
/// <param name="KelvinsPerPascal">Slope there.</param>
/// <param name="HalfGlideKelvins">Half the distance of bubble and dew where the middle was taken, else 0.</param>
/// <param name="Outside">−1 below the curve, 1 above it, 0 on it.</param>
internal sealed record SaturationPoint(string Curve, double Celsius, double KelvinsPerPascal, double HalfGlideKelvins,
    int Outside)
{
    private static readonly Citation Zero = Citation.Textbook("absolute = gauge + air pressure");

    /// <summary>Finds it.</summary>
    /// <param name="curve"><c>bubble</c>, <c>dew</c> or <c>middle</c>.</param>
    /// <param name="gaugePascals">Pa; with the air pressure above 0.</param>
    public static SaturationPoint At(Refrigerant refrigerant, string curve, double gaugePascals, double airPascals)
    {
        var absolute = AbsolutePressure.FromPascals(Math.Min(gaugePascals + airPascals, 1e9));
        if (curve != "middle")
            return On(curve, refrigerant.Curve(curve)!, absolute);
        var (bubble, dew) = (On(curve, refrigerant.Bubble!, absolute), On(curve, refrigerant.Dew!, absolute));
        return new SaturationPoint(
            curve, (bubble.Celsius + dew.Celsius) / 2, (bubble.KelvinsPerPascal + dew.KelvinsPerPascal) / 2,
            Math.Abs(dew.Celsius - bubble.Celsius) / 2, bubble.Outside != 0 ? bubble.Outside : dew.Outside);
    }

    public Derivation Reasoned(Refrigerant refrigerant, double gaugePascals, Unit gaugeUnit, double airPascals,
        Unit shown)
    {
        var gauge = Unit.TryParse(gaugeUnit.Code, QuantityKind.GaugePressure, out var known) ? known
            : Units.KiloPascalGauge;
        var sum = Derivation.Of("p = p_gauge + p_air", Zero).With("p_gauge", gaugePascals, gauge)
            .With("p_air", airPascals, Units.KiloPascalAbsolute)
                .Gives("p", gaugePascals + airPascals, Units.KiloPascalAbsolute);
        return Derivation.Of(refrigerant.Dew!.Formula + ", solved for T", refrigerant.Source)
            .With("refrigerant", refrigerant.Name).With("curve", Curve)
            .With("p", gaugePascals + airPascals, Units.KiloPascalAbsolute).Gives("T_sat", Celsius, shown).From(sum);
    }

    private static SaturationPoint On(string name, SaturationCurve curve, AbsolutePressure pressure)
    {
        var outside = pressure.Pascals < curve.Lowest.Pascals ? -1 : pressure.Pascals > curve.Highest.Pascals ? 1 : 0;
        var temperature = outside < 0 ? curve.Coldest : curve.Hottest;
        if (outside == 0 && curve.TryTemperature(pressure, out var found))
            temperature = found;
        return new SaturationPoint(name, temperature.Celsius, curve.SlopeAt(temperature), 0, outside);
    }
}
