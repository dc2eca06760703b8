using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations.Electrics;

/// <summary>Resistance of windings: temperature, star and delta.</summary>
public static class Winding
{
    /// <summary>Temperature below 0 °C at which copper's resistance would reach zero, K.</summary>
    public const double Copper = 235;

    public static readonly Citation TemperatureLaw =
        new("IEC 60034-1 (235 K for copper); IEEE 112 and NEMA (234.5 K)", "resistance method");

    public static readonly Citation Circuit = Citation.Textbook("star and delta of three windings");

    /// <summary>Resistance at another temperature: R2 = R1 (k + T2) / (k + T1).</summary>
    /// <param name="at">The temperature of <paramref name="resistance"/>; above −<paramref name="zeroKelvins"/>
    /// °C.</param>
    /// <param name="zeroKelvins">K below 0 °C: 235 (IEC) or 234.5 (IEEE) for copper, 225 for aluminium.</param>
    public static Resistance AtTemperature(Resistance resistance, Temperature at, Temperature wanted,
        double zeroKelvins = Copper) =>
        Resistance.FromOhms(resistance.Ohms * (zeroKelvins + wanted.Celsius) / (zeroKelvins + at.Celsius));

    /// <summary>Temperature of a winding, °C, from its cold and hot resistance.</summary>
    public static double HotCelsius(Resistance cold, Temperature atCold, Resistance hot, double zeroKelvins = Copper) =>
        hot.Ohms / cold.Ohms * (zeroKelvins + atCold.Celsius) - zeroKelvins;

    /// <summary>What a meter reads between two terminals when all phases are equal.</summary>
    public static Resistance BetweenTerminals(Resistance phase, bool star) =>
        Resistance.FromOhms(star ? 2 * phase.Ohms : 2 * phase.Ohms / 3);

    /// <summary>The three phases of a star from its terminal readings, Ω; one is negative when no star reads like
    /// that.</summary>
    public static (double One, double Two, double Three) StarPhases(double r12, double r23, double r31) =>
        ((r12 + r31 - r23) / 2, (r12 + r23 - r31) / 2, (r23 + r31 - r12) / 2);

    /// <summary>Terminal readings of a delta, Ω: one phase beside the other two in series.</summary>
    public static (double R12, double R23, double R31) DeltaTerminals(Resistance r12, Resistance r23, Resistance r31)
    {
        var sum = Require.Positive(r12.Ohms + r23.Ohms + r31.Ohms, "Ω");
        double Terminal(Resistance phase) => phase.Ohms * (sum - phase.Ohms) / sum;
        return (Terminal(r12), Terminal(r23), Terminal(r31));
    }
}
