namespace DxAssistant.Knowledge.Quantities;

/// <summary>A difference of two temperatures. The default value is none.</summary>
public readonly record struct TemperatureDelta
{
    private TemperatureDelta(double kelvins) => Kelvins = kelvins;

    /// <summary>Kelvins (K); may be negative.</summary>
    public double Kelvins { get; }

    /// <summary>Makes a difference from kelvins.</summary>
    /// <param name="kelvins">K, −10,000 to 10,000, ends included.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="kelvins"/> is outside that range or
    /// NaN.</exception>
    public static TemperatureDelta FromKelvins(double kelvins) => new(Require.InRange(kelvins, -10_000, 10_000, "K"));
}
