namespace DxAssistant.Knowledge.Quantities;

/// <summary>A volume flow of air. The default value is none.</summary>
public readonly record struct AirFlow
{
    private AirFlow(double cubicMetersPerSecond) => CubicMetersPerSecond = cubicMetersPerSecond;

    /// <summary>Cubic meters per second (m³/s), 0 or more.</summary>
    public double CubicMetersPerSecond { get; }

    /// <summary>Makes an air flow from cubic meters per second.</summary>
    /// <param name="cubicMetersPerSecond">m³/s, finite, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The argument is negative, infinite or NaN.</exception>
    public static AirFlow FromCubicMetersPerSecond(double cubicMetersPerSecond) =>
        new(Require.NotNegative(cubicMetersPerSecond, "m³/s"));
}
