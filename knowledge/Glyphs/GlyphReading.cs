using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Glyphs;

/// <summary>What a display or its lamps were said to show.</summary>
/// <param name="Canonical">
/// The code in upper case without marks: a letter where the code has its letter (first), a digit where it has its
/// number, so that ES and E5 are one. Empty if only blinks were said.
/// </param>
/// <param name="Alternatives">Codes that look the same or differ by one segment, nearest first, then ordinal.</param>
/// <param name="Flashing">Whether the code flashes; null if not said.</param>
/// <param name="Blinks">How often the lamp blinks before it pauses; null if not said or if several lamps do.</param>
/// <param name="Lamps">The counts lamp by lamp, in the order said.</param>
public sealed record GlyphReading(
    string Canonical,
    ImmutableArray<string> Alternatives,
    bool? Flashing = null,
    int? Blinks = null,
    ImmutableArray<LampCount> Lamps = default)
{
    public ImmutableArray<LampCount> Lamps { get; init; } = Lamps.IsDefault ? [] : Lamps;

    public bool Equals(GlyphReading? other) => other is not null && Canonical == other.Canonical
        && Flashing == other.Flashing && Blinks == other.Blinks
        && Alternatives.SequenceEqual(other.Alternatives) && Lamps.SequenceEqual(other.Lamps);

    public override int GetHashCode() => HashCode.Combine(Canonical, Flashing, Blinks);
}
