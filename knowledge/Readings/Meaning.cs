using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Readings;

/// <summary>One way to take a message that can be taken in several.</summary>
public sealed record Meaning(ImmutableArray<Reading> Readings)
{
    public bool Equals(Meaning? other) => other is not null && Readings.SequenceEqual(other.Readings);

    public override int GetHashCode() => Readings.Length == 0 ? 0 : Readings[0].GetHashCode();
}
