namespace DxAssistant.Knowledge.Quantities;

/// <summary>The size of a rotational speed. The default value is none.</summary>
public readonly record struct RotationalSpeed
{
    private RotationalSpeed(double revolutionsPerMinute) => RevolutionsPerMinute = revolutionsPerMinute;

    /// <summary>Revolutions per minute (r/min), 0 or more.</summary>
    public double RevolutionsPerMinute { get; }

    /// <summary>Makes a rotational speed from revolutions per minute.</summary>
    /// <param name="revolutionsPerMinute">r/min, finite, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The argument is negative, infinite or NaN.</exception>
    public static RotationalSpeed FromRevolutionsPerMinute(double revolutionsPerMinute) =>
        new(Require.NotNegative(revolutionsPerMinute, "r/min"));
}
