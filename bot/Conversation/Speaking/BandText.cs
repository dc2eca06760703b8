using DxAssistant.Knowledge.Judging;
using DxAssistant.Knowledge.Pictures;

namespace DxAssistant.Conversation.Speaking;

/// <summary>What a healthy unit shows, as text.</summary>
internal static class BandText
{
    /// <summary>Such as <c>superheat 3 K to 9 K</c>; empty when no limit is known.</summary>
    public static string Of(ExpectedBand band) =>
        Figures.Limits(band) is { Length: > 0 } limits ? $"{band.Name} {limits}".TrimStart() : "";

    /// <summary>Such as <c>superheat 11.2 K</c>: what was found; empty when it was no number.</summary>
    public static string Found(ExpectedBand band) =>
        band.Found is { } found ? $"{band.Name} {Figures.Of(found)}".TrimStart() : "";
}
