using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations.Electrics;

/// <summary>Insulation resistance of motor windings. For motors, not for inverter boards: those come off
/// first.</summary>
/// <remarks>Source: IEEE 43-2013.</remarks>
public static class Insulation
{
    public static readonly Citation Standard = new("IEEE 43-2013");
    public static readonly Citation Halving = new("IEEE 43", "doubling for each 10 K");
    public static readonly Citation Thermosetting = new(
        "IEEE 43-2013", "thermosetting insulation", CitationStanding.FromMemory);

    /// <summary>Minimum after one minute at 40 °C by the old rule: 1 MΩ more than the rated kilovolts.</summary>
    public static Resistance MinimumByVoltage(Voltage rated) => Resistance.FromOhms((rated.Volts / 1000 + 1) * 1e6);

    /// <summary>Factor that takes a reading to 40 °C: half for each 10 K below.</summary>
    public static double HalvingFactor(Temperature winding) => Math.Pow(0.5, (40 - winding.Celsius) / 10);

    /// <summary>Factor that takes a reading to 40 °C, thermosetting insulation.</summary>
    /// <param name="winding">10 to 85 °C, ends included.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    public static double ThermosettingFactor(Temperature winding)
    {
        var celsius = Require.InRange(winding.Celsius, 9.999999, 85.000001, "°C");
        // The standard writes 273, not 273.15.
        return Math.Exp((celsius >= 40 ? -4230 : -1245) * (1 / (celsius + 273) - 1.0 / 313));
    }

    /// <summary>The coldest winding a reading is corrected for, °C.</summary>
    public const double Coldest = -20;

    /// <summary>The hottest winding a reading is corrected for, °C.</summary>
    public const double Hottest = 85;

    /// <summary>Factor that takes a reading to 40 °C by whichever rule is the more cautious, with that rule.</summary>
    /// <param name="winding"><see cref="Coldest"/> to <see cref="Hottest"/>, ends included.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside that range.</exception>
    /// <remarks>Below 40 °C halving takes more off, above it the formula of the 2013 edition adds less.</remarks>
    public static (double Factor, string Rule, Citation Source) CautiousFactor(Temperature winding)
    {
        var celsius = Require.InRange(winding.Celsius, Coldest - 1e-6, Hottest + 1e-6, "°C");
        return celsius < 40
            ? (HalvingFactor(winding), "K = 0.5^((40 °C - T) / 10 K)", Halving)
            : (ThermosettingFactor(winding), "K = exp(-4230 (1/(T+273) - 1/313))", Thermosetting);
    }

    /// <summary>Minimum by kind of winding at 40 °C, MΩ; null when it depends on the rated voltage or is not
    /// known.</summary>
    /// <param name="winding">As the standard's table says it, in any case.</param>
    public static double? MinimumMegohms(string winding)
    {
        bool Says(string word) => winding.Contains(word, StringComparison.OrdinalIgnoreCase);
        if (BeforeRule(winding))
            return null;
        if (Says("random") || Says("form") && (Says("below") || Says("under")))
            return 5;
        return Says("armature") || Says("form") ? 100 : null;
    }

    /// <summary>True for the windings to which the rated kilovolts apply: before about 1970, and field
    /// windings.</summary>
    public static bool BeforeRule(string winding) =>
        winding.Contains("before", StringComparison.OrdinalIgnoreCase)
            || winding.Contains("field", StringComparison.OrdinalIgnoreCase);
}
