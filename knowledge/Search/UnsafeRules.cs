using System.Collections.Frozen;
using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Search;

/// <summary>The dangerous requests. Better one refusal too many than one switch bridged.</summary>
internal static class UnsafeRules
{
    public static readonly ImmutableArray<UnsafeRule> All =
        [.. DefeatRules.All, .. RefrigerantRules.All, .. LiveWorkRules.All, .. OwnerRules.All, .. HazardRules.All];

    /// <summary>The words of all rules: the spelling must not mend them into others.</summary>
    public static readonly FrozenSet<string> Words =
        All.SelectMany(rule => rule.Act.Words.Concat(rule.Object?.Words ?? [])).ToFrozenSet(StringComparer.Ordinal);
}
