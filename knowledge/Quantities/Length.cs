namespace DxAssistant.Knowledge.Quantities;

/// <summary>A length or height. The default value is none.</summary>
public readonly record struct Length
{
    private Length(double meters) => Meters = meters;

    /// <summary>Meters (m), 0 or more.</summary>
    public double Meters { get; }

    /// <summary>Makes a length from meters.</summary>
    /// <param name="meters">m, finite, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The argument is negative, infinite or NaN.</exception>
    public static Length FromMeters(double meters) => new(Require.NotNegative(meters, "m"));
}
