namespace DxAssistant.Knowledge.Quantities;

/// <summary>A frequency. The default value is none.</summary>
public readonly record struct Frequency
{
    private Frequency(double hertz) => Hertz = hertz;

    /// <summary>Hertz (Hz), 0 or more.</summary>
    public double Hertz { get; }

    /// <summary>Makes a frequency from hertz.</summary>
    /// <param name="hertz">Hz, finite, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The argument is negative, infinite or NaN.</exception>
    public static Frequency FromHertz(double hertz) => new(Require.NotNegative(hertz, "Hz"));
}
