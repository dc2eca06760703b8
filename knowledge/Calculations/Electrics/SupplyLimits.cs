using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations.Electrics;

/// <summary>How far a supply voltage may be from its nominal value.</summary>
public static class SupplyLimits
{
    public static readonly Citation American = new("ANSI C84.1", "table 1; some limits from memory");
    public static readonly Citation International = new("IEC 60038", "230 V and 230/400 V, 10 %");
    public static readonly Citation SplitSupply = Citation.Textbook("two loads in series divide the full voltage")
        .FromMemory();

    /// <summary>Below this share of nominal there is no supply at all, only what a meter picks up.</summary>
    /// <remarks>
    /// A multimeter of 10 MΩ shows a few volts to some tens on a dead core that lies beside a live one. A bad joint
    /// mostly leaves a third of nominal or more; with the neutral lost either can be read. A tenth: common practice, no
    /// source.
    /// </remarks>
    public const double AbsentShare = 0.1;

    /// <summary>Whole volts as the table prints them: nominal, then A service, A utilization, B service, B
    /// utilization.</summary>
    private static readonly (int Nominal, int[] Limits)[] Table =
    [
        (120, [114, 126, 110, 126, 110, 127, 106, 127]),
        (208, [197, 218, 191, 218, 191, 220, 184, 220]),
        (240, [228, 252, 220, 252, 220, 254, 212, 254]),
        (480, [456, 504, 440, 504, 440, 508, 424, 508]),
    ];

    // The service band is 0.95 to 1.05 (A) and 0.917 to 1.058 (B) of nominal; utilization as the table's own ratios.
    private static readonly double[] Shares = [0.95, 1.05, 0.9167, 1.05, 0.917, 1.058, 0.8833, 1.058];

    /// <summary>Limits in volts, ends included.</summary>
    /// <param name="nominal">From 100 V to 1,000 V.</param>
    /// <param name="rangeB">Range B in place of A.</param>
    /// <param name="utilization">At the terminals of the equipment, not at the service entrance.</param>
    /// <remarks>Source: ANSI C84.1, table 1. Nominal voltages the table does not hold are taken by ratio, to whole
    /// volts.</remarks>
    public static (double Least, double Most) Ansi(Voltage nominal, bool rangeB, bool utilization)
    {
        var column = (rangeB ? 4 : 0) + (utilization ? 2 : 0);
        foreach (var (volts, limits) in Table)
            if (Math.Abs(volts - nominal.Volts) < 0.5)
                return (limits[column], limits[column + 1]);
        return (Math.Round(nominal.Volts * Shares[column]), Math.Round(nominal.Volts * Shares[column + 1]));
    }

    /// <summary>Limits 10 % below and above nominal, in volts, ends included.</summary>
    /// <remarks>Source: IEC 60038. Some countries adopt +10/−6 %.</remarks>
    public static (double Least, double Most) Iec(Voltage nominal) => (0.9 * nominal.Volts, 1.1 * nominal.Volts);

    /// <summary>What each leg of a split supply shows when its neutral is open: the loads divide the full
    /// voltage.</summary>
    public static (Voltage One, Voltage Two) OpenNeutral(Voltage line, Resistance one, Resistance two)
    {
        var share = one.Ohms / Require.Positive(one.Ohms + two.Ohms, "Ω");
        return (Voltage.FromVolts(line.Volts * share), Voltage.FromVolts(line.Volts * (1 - share)));
    }
}
