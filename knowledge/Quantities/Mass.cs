namespace DxAssistant.Knowledge.Quantities;

/// <summary>A mass. The default value is none.</summary>
public readonly record struct Mass
{
    private Mass(double kilograms) => Kilograms = kilograms;

    /// <summary>Kilograms (kg), 0 or more.</summary>
    public double Kilograms { get; }

    /// <summary>Makes a mass from kilograms.</summary>
    /// <param name="kilograms">kg, finite, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The argument is negative, infinite or NaN.</exception>
    public static Mass FromKilograms(double kilograms) => new(Require.NotNegative(kilograms, "kg"));
}
