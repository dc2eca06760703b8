using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations.Circuit;

/// <summary>Saturation temperature at a gauge, and how it was reached.</summary>
/// <param name="AtGauge">The saturation temperature.</param>
/// <param name="Absolute">The absolute pressure at which it holds.</param>
public sealed record Saturation(Temperature AtGauge, AbsolutePressure Absolute, Derivation Derivation)
{
    private static readonly Citation Zero = Citation.Textbook("absolute = gauge + atmosphere");

    /// <summary>Finds it; null when the pressure is below a vacuum or outside the curve.</summary>
    /// <param name="curve"><c>bubble</c> or <c>dew</c>.</param>
    public static Saturation? At(Refrigerant refrigerant, string curve, GaugePressure gauge,
        AbsolutePressure atmosphere, Unit shown)
    {
        var pascals = gauge.Pascals + atmosphere.Pascals;
        if (!(pascals > 0) || refrigerant.Curve(curve) is not { } saturation)
            return null;
        var absolute = AbsolutePressure.FromPascals(pascals);
        if (!saturation.TryTemperature(absolute, out var temperature))
            return null;
        var sum = Derivation.Of("p = p_gauge + p_atm", Zero).With("p_gauge", gauge.Pascals, Units.KiloPascalGauge)
            .With("p_atm", atmosphere.Pascals, Units.KiloPascalAbsolute).Gives("p", pascals, Units.KiloPascalAbsolute);
        var derivation = Derivation.Of(saturation.Formula + ", solved for T", refrigerant.Source)
            .With("refrigerant", refrigerant.Name)
            .With("curve", curve).With("p", pascals, Units.KiloPascalAbsolute)
                .Gives("T_sat", temperature.Celsius, shown).From(sum);
        return new Saturation(temperature, absolute, derivation);
    }
}
