using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Rules.Linking;

namespace DxAssistant.Knowledge.Content.Rules.Diagnosis;

/// <summary>What one page adds to the question which faults no check can see.</summary>
/// <param name="Mention">The page; what is wrong with a fault that is seen nowhere.</param>
internal sealed record Sight(Mention Mention)
{
    /// <summary>The series that a check lists, or the ids of those that a fault is for.</summary>
    public ImmutableArray<string> Series { get; init; } = [];

    /// <summary>True when a check with these series can be done on one of them.</summary>
    public bool Includes(string series) => Series.IsEmpty || Series.Contains(series);

    public bool Equals(Sight? other) =>
        other is not null && Mention == other.Mention && Series.SequenceEqual(other.Series);

    public override int GetHashCode() => Mention.GetHashCode();
}
