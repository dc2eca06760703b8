namespace DxAssistant.Knowledge.Quantities;

/// <summary>A pressure above the local atmosphere, as gauges show it. The default value is an open gauge.</summary>
public readonly record struct GaugePressure
{
    private GaugePressure(double pascals) => Pascals = pascals;

    /// <summary>Pascals (Pa) above the atmosphere; negative below it.</summary>
    public double Pascals { get; }

    /// <summary>Makes a gauge pressure from pascals.</summary>
    /// <param name="pascals">Pa, −110,000 to 1,000,000,000, ends included.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="pascals"/> is outside that range or
    /// NaN.</exception>
    public static GaugePressure FromPascals(double pascals) => new(Require.InRange(pascals, -110_000, 1e9, "Pa"));

    /// <summary>Adds the atmosphere.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The sum is below a perfect vacuum.</exception>
    public AbsolutePressure AsAbsolute(AbsolutePressure atmosphere) =>
        AbsolutePressure.FromPascals(Pascals + atmosphere.Pascals);
}
