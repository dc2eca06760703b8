namespace DxAssistant.Server.Simulating;

/// <summary>What there is to read before any meter errs: a number, an open circuit or a short.</summary>
/// <param name="Si">In the SI base of its kind; without meaning where <paramref name="Mark"/> is given.</param>
/// <param name="Mark">What a meter shows instead of a number; null for a number.</param>
internal readonly record struct TrueReading(double Si, string? Mark = null)
{
    public static TrueReading Open { get; } = new(double.NaN, "OL");

    public static TrueReading Of(double si) => new(si);
}
