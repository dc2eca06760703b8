namespace DxAssistant.Knowledge.Quantities;

/// <summary>An electrical capacitance. The default value is none.</summary>
public readonly record struct Capacitance
{
    private Capacitance(double farads) => Farads = farads;

    /// <summary>Farads (F), 0 or more.</summary>
    public double Farads { get; }

    /// <summary>Makes a capacitance from farads.</summary>
    /// <param name="farads">F, finite, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The argument is negative, infinite or NaN.</exception>
    public static Capacitance FromFarads(double farads) => new(Require.NotNegative(farads, "F"));
}
