namespace DxAssistant.Knowledge.Quantities;

/// <summary>An electrical resistance; never negative. The default value is none.</summary>
public readonly record struct Resistance
{
    private Resistance(double ohms) => Ohms = ohms;

    /// <summary>Ohms (Ω), 0 or more.</summary>
    public double Ohms { get; }

    /// <summary>Makes a resistance from ohms.</summary>
    /// <param name="ohms">Ω, finite, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The argument is negative, infinite or NaN.</exception>
    public static Resistance FromOhms(double ohms) => new(Require.NotNegative(ohms, "Ω"));
}
