namespace DxAssistant.Knowledge.Quantities;

/// <summary>A density, or a mass concentration. The default value is none.</summary>
public readonly record struct Density
{
    private Density(double kilogramsPerCubicMeter) => KilogramsPerCubicMeter = kilogramsPerCubicMeter;

    /// <summary>Kilograms per cubic meter (kg/m³), 0 or more.</summary>
    public double KilogramsPerCubicMeter { get; }

    /// <summary>Makes a density from kilograms per cubic meter.</summary>
    /// <param name="kilogramsPerCubicMeter">kg/m³, finite, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The argument is negative, infinite or NaN.</exception>
    public static Density FromKilogramsPerCubicMeter(double kilogramsPerCubicMeter) =>
        new(Require.NotNegative(kilogramsPerCubicMeter, "kg/m³"));
}
