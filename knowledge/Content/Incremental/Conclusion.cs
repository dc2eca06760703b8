using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Rules;

namespace DxAssistant.Knowledge.Content.Incremental;

/// <summary>What a rule concluded, and from what.</summary>
internal sealed record Conclusion(List<object> From, ImmutableArray<Diagnostic> Found)
{
    /// <param name="before">The conclusion of last time, which holds when everything is as it was.</param>
    public static Conclusion Of(IGatheringRule rule, List<object> gathered, Conclusion? before) =>
        new(gathered, before is not null && Same(before.From, gathered) ? before.Found : [.. rule.Conclude(gathered)]);

    private static bool Same(List<object> one, List<object> other)
    {
        if (one.Count != other.Count) return false;
        for (int i = 0; i < one.Count; i++)
            if (!ReferenceEquals(one[i], other[i]) && !one[i].Equals(other[i])) return false;
        return true;
    }
}
