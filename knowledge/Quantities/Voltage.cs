namespace DxAssistant.Knowledge.Quantities;

/// <summary>The size of a voltage: effective value when alternating, whichever way the leads were put when direct. The
/// default value is none.</summary>
public readonly record struct Voltage
{
    private Voltage(double volts) => Volts = volts;

    /// <summary>Volts (V), 0 or more.</summary>
    public double Volts { get; }

    /// <summary>Makes a voltage from volts.</summary>
    /// <param name="volts">V, finite, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The argument is negative, infinite or NaN.</exception>
    public static Voltage FromVolts(double volts) => new(Require.NotNegative(volts, "V"));
}
