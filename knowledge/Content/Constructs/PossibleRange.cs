using System.Diagnostics.CodeAnalysis;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Content.Constructs;

/// <summary>What a reading can physically be, written <c>0.05 Ω to 100 Ω</c>; ends included, in the SI base of the
/// kind.</summary>
internal sealed record PossibleRange(double Lowest, double Highest)
{
    /// <summary>Reads a range of one kind of quantity.</summary>
    /// <returns>False when it is not of that form, not of that kind, or not from low to high.</returns>
    public static bool TryRead(string text, QuantityKind kind, [NotNullWhen(true)] out PossibleRange? range)
    {
        string[] ends = text.Split(" to ", StringSplitOptions.TrimEntries);
        bool isRange = ends.Length == 2
            & QuantityText.TryParse(ends[0], kind, out Quantity? low)
            & QuantityText.TryParse(ends[^1], kind, out Quantity? high);
        range = isRange && low!.Si < high!.Si ? new PossibleRange(low.Si, high.Si) : null;
        return range is not null;
    }
}
