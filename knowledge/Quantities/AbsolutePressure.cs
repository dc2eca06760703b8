namespace DxAssistant.Knowledge.Quantities;

/// <summary>A pressure above a perfect vacuum. The default value is a perfect vacuum.</summary>
public readonly record struct AbsolutePressure
{
    private AbsolutePressure(double pascals) => Pascals = pascals;

    /// <summary>Pascals (Pa), 0 or more.</summary>
    public double Pascals { get; }

    /// <summary>The standard atmosphere at sea level, 101,325 Pa.</summary>
    /// <remarks>Source: ISO 2533, standard atmosphere.</remarks>
    public static AbsolutePressure StandardAtmosphere { get; } = new(101_325);

    /// <summary>Makes an absolute pressure from pascals.</summary>
    /// <param name="pascals">Pa, 0 to 1,000,000,000, ends included.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="pascals"/> is outside that range or
    /// NaN.</exception>
    public static AbsolutePressure FromPascals(double pascals) => new(Require.InRange(pascals, 0, 1e9, "Pa"));

    /// <summary>What a gauge shows of this pressure where the atmosphere is <paramref name="atmosphere"/>.</summary>
    public GaugePressure AsGauge(AbsolutePressure atmosphere) =>
        GaugePressure.FromPascals(Pascals - atmosphere.Pascals);
}
