using DxAssistant.Knowledge.Judging;
using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Knowledge.Pictures;

/// <summary>Figures as pictures and sentences both show them.</summary>
public static class Figures
{
    /// <summary>Three digits: what a technician compares a meter with.</summary>
    private const int LimitDigits = 3;

    /// <summary>A reading in the unit it was given in, or what the meter showed.</summary>
    public static string Of(Reading reading) => reading.State switch
    {
        ReadingState.Number => $"{Bare(reading)} {reading.Unit.Symbol}".TrimEnd(),
        ReadingState.OpenCircuit => "OL",
        _ => $"0 {reading.Unit.Symbol}",
    };

    /// <summary>A limit or a figure made from readings.</summary>
    public static string Of(Quantity quantity) =>
        $"{NumberText.Of(quantity.Value, LimitDigits)} {quantity.Unit.Symbol}".TrimEnd();

    /// <summary>Such as <c>3 K to 9 K</c>; empty when no limit is known.</summary>
    public static string Limits(ExpectedBand band) => (band.Low, band.High, band.Nominal) switch
    {
        ({ } low, { } high, _) => $"{Of(low)} to {Of(high)}",
        ({ } low, null, _) => $"≥ {Of(low)}",
        (null, { } high, _) => $"≤ {Of(high)}",
        (null, null, { } nominal) => Of(nominal),
        _ => "",
    };

    /// <summary>How far a figure may be off with a probability of 95 %: two standard deviations.</summary>
    /// <remarks>Source: GUM, JCGM 100:2008, 6.3.3, coverage factor 2.</remarks>
    internal static Quantity Doubt(Quantity standard) => standard with { Value = 2 * standard.Value };

    /// <summary>A doubt needs no more than two digits (GUM, JCGM 100:2008, 7.2.6).</summary>
    internal static string OfDoubt(Quantity standard) =>
        $"{NumberText.Of(Doubt(standard).Value, 2)} {standard.Unit.Symbol}".TrimEnd();

    private static string Bare(Reading reading) => NumberText.Of(reading.Unit.FromSi(reading.Value), 5);
}
