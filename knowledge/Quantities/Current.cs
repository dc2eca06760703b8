namespace DxAssistant.Knowledge.Quantities;

/// <summary>The size of a current: effective value when alternating. The default value is none.</summary>
public readonly record struct Current
{
    private Current(double amperes) => Amperes = amperes;

    /// <summary>Amperes (A), 0 or more.</summary>
    public double Amperes { get; }

    /// <summary>Makes a current from amperes.</summary>
    /// <param name="amperes">A, finite, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The argument is negative, infinite or NaN.</exception>
    public static Current FromAmperes(double amperes) => new(Require.NotNegative(amperes, "A"));
}
