using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations.Electrics;

/// <summary>Run capacitors measured under load.</summary>
public static class Capacitors
{
    public static readonly Citation Reactance = Citation.Textbook("reactance of a capacitor");
    public static readonly Citation Nameplate = Citation.CommonPractice with { Place =
        "nameplate tolerance, commonly 6 %, limits included" };

    /// <summary>Capacitance from the current through it and the voltage across it: C = I / (2 π f V).</summary>
    public static Capacitance UnderLoad(Current current, Voltage voltage, Frequency frequency) =>
        Capacitance.FromFarads(current.Amperes * Factor(frequency) / Require.Positive(voltage.Volts, "V"));

    /// <summary>1 / (2 π f), in F·V/A.</summary>
    public static double Factor(Frequency frequency) => 1 / (2 * Math.PI * Require.Positive(frequency.Hertz, "Hz"));
}
