namespace DxAssistant.Knowledge.Quantities;

/// <summary>An area. The default value is none.</summary>
public readonly record struct Area
{
    private Area(double squareMeters) => SquareMeters = squareMeters;

    /// <summary>Square meters (m²), 0 or more.</summary>
    public double SquareMeters { get; }

    /// <summary>Makes an area from square meters.</summary>
    /// <param name="squareMeters">m², finite, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The argument is negative, infinite or NaN.</exception>
    public static Area FromSquareMeters(double squareMeters) => new(Require.NotNegative(squareMeters, "m²"));
}
