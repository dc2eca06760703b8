namespace DxAssistant.Knowledge.Quantities;

/// <summary>A volume. The default value is none.</summary>
public readonly record struct Volume
{
    private Volume(double cubicMeters) => CubicMeters = cubicMeters;

    /// <summary>Cubic meters (m³), 0 or more.</summary>
    public double CubicMeters { get; }

    /// <summary>Makes a volume from cubic meters.</summary>
    /// <param name="cubicMeters">m³, finite, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The argument is negative, infinite or NaN.</exception>
    public static Volume FromCubicMeters(double cubicMeters) => new(Require.NotNegative(cubicMeters, "m³"));
}
