using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations.Electrics;

/// <summary>The direct voltage behind a rectifier.</summary>
public static class Rectifier
{
    public static readonly Citation Circuit = Citation.Textbook("peak and mean of a rectified sine");

    /// <summary>Unloaded: the peak of the sine, √2 times its effective value. A boost stage lifts it above
    /// this.</summary>
    public static Voltage Peak(Voltage alternating) => Voltage.FromVolts(Math.Sqrt(2) * alternating.Volts);

    /// <summary>Mean of a three-phase bridge, 3 √2 / π times the line voltage.</summary>
    public static Voltage ThreePhaseMean(Voltage line) => Voltage.FromVolts(3 * Math.Sqrt(2) / Math.PI * line.Volts);
}
