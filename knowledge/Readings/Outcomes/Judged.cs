using System.Collections.Immutable;
using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings.Mentions;
using DxAssistant.Knowledge.Readings.Units;

namespace DxAssistant.Knowledge.Readings.Outcomes;

/// <summary>A mention with everything it can mean.</summary>
/// <param name="Meanings">Likeliest first; empty if it can be nothing.</param>
/// <param name="Reason">Why it must be asked about; null if it is plain, with exactly one meaning.</param>
internal sealed record Judged(Mention Mention, ImmutableArray<Reading> Meanings, string? Reason)
{
    public bool IsPlain => Reason is null;

    /// <summary>It casts doubt on others but is no reading by itself.</summary>
    public bool IsLoose => Mention.IsLoose && !IsPlain;

    public bool IsLabelled => Mention.Label is not null;

    /// <summary>It is or can be of a kind; every pressure is a pressure here.</summary>
    public bool CanBe(QuantityKind kind) => Meanings.IsEmpty
        ? Mention.Units.IsEmpty || Mention.Units.Any(unit => AreAlike(unit.Kind, kind))
        : Meanings.Any(meaning => AreAlike(meaning.Unit.Kind, kind));

    public static bool AreAlike(QuantityKind one, QuantityKind other) => one == other
        || (one.IsPressure() && other.IsPressure());
}
