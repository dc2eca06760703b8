using DxAssistant.Knowledge.Judging;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Conversation.Speaking;

/// <summary>What a healthy unit shows, as text.</summary>
internal static class BandText
{
    /// <summary>Three digits: what a technician compares a meter with.</summary>
    private const int Digits = 3;

    /// <summary>Such as <c>superheat 3 K to 9 K</c>; empty when no limit is known.</summary>
    public static string Of(ExpectedBand band) => Limits(band) is { Length: > 0 } limits ? $"{band.Name} {limits}".TrimStart() : "";

    private static string Limits(ExpectedBand band) => (band.Low, band.High, band.Nominal) switch
    {
        ({ } low, { } high, _) => $"{Text(low)} to {Text(high)}",
        ({ } low, null, _) => $"≥ {Text(low)}",
        (null, { } high, _) => $"≤ {Text(high)}",
        (null, null, { } nominal) => Text(nominal),
        _ => "",
    };

    private static string Text(Quantity quantity) =>
        $"{NumberText.Of(quantity.Value, Digits)} {quantity.Unit.Symbol}".TrimEnd();
}
