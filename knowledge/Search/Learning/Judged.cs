using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Search.Learning;

/// <summary>How probable a model holds each of its groups to be.</summary>
/// <param name="Groups">In rising order; none if nothing was learnt.</param>
/// <param name="Probabilities">In the same order, 0 to 1.</param>
internal readonly record struct Judged(ImmutableArray<int> Groups, float[] Probabilities)
{
    public static readonly Judged Nothing = new([], []);

    /// <summary>0 for a group that is not the model's.</summary>
    public double Of(int group)
    {
        if (Groups.IsEmpty)
            return 0;
        // Groups mostly follow one another without a gap.
        int at = group - Groups[0];
        if (at < 0 || at >= Groups.Length || Groups[at] != group)
            at = Groups.BinarySearch(group);
        return at < 0 ? 0 : Probabilities[at];
    }

    /// <summary>The likeliest group, of several the first; null if nothing was learnt.</summary>
    public (int Group, double Probability)? Likeliest =>
        Groups.IsEmpty ? null : Array.IndexOf(Probabilities, Probabilities.Max()) is var at
            ? (Groups[at], Probabilities[at])
            : null;
}
