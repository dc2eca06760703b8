using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Rules;

namespace DxAssistant.Knowledge.Content.Incremental;

/// <summary>What a rule concluded, and from what.</summary>
internal sealed record Conclusion(object[] From, ImmutableArray<Diagnostic> Found)
{
    /// <param name="before">The conclusion of last time, which holds when everything is as it was.</param>
    public static Conclusion Of(IGatheringRule rule, object[] gathered, Conclusion? before) =>
        new(gathered, before is not null && Same(before.From, gathered) ? before.Found : [.. rule.Conclude(gathered)]);

    private static bool Same(object[] one, object[] other)
    {
        if (one.Length != other.Length) return false;
        for (int i = 0; i < one.Length; i++)
            if (!ReferenceEquals(one[i], other[i]) && !one[i].Equals(other[i])) return false;
        return true;
    }
}
