using System.Collections.Frozen;
using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Search.Requests;

/// <summary>The dangerous requests. Better one refusal too many than one switch bridged.</summary>
internal static class UnsafeRules
{
    public static readonly ImmutableArray<UnsafeRule> All =
        [.. Listed.Where(rule => rule.IsOutright), .. Listed.Where(rule => !rule.IsOutright)];

    // What is outright goes before all else: a milder rule must not hide it.
    private static ImmutableArray<UnsafeRule> Listed =>
        [.. DefeatRules.All, .. RefrigerantRules.All, .. LiveWorkRules.All, .. OwnerRules.All, .. HazardRules.All,
            .. GuardRules.All, .. MakeshiftRules.All, .. RecordRules.All,
            .. MovingPartRules.All, .. SupplyRules.All, .. SubstanceRules.All, .. BareUnitRules.All,
            .. StandInRules.All];

    /// <summary>The words of all rules: the spelling must not mend them into others.</summary>
    public static readonly FrozenSet<string> Words =
        All.SelectMany(rule => rule.Act.Words.Concat(rule.Object?.Words ?? []).Concat(rule.Also?.Words ?? [])
            .Concat(rule.And?.Words ?? [])).ToFrozenSet(StringComparer.Ordinal);

    /// <summary>By the first word of an act, the places of the rules whose act begins so.</summary>
    private static readonly FrozenDictionary<string, ImmutableArray<int>> ByFirst = All
        .SelectMany((rule, place) => rule.Act.Firsts.Select(first => (first, place)))
        .GroupBy(at => at.first, at => at.place, StringComparer.Ordinal)
        .ToFrozenDictionary(first => first.Key, first => first.ToImmutableArray(), StringComparer.Ordinal);

    /// <summary>The first rule that fits a message, or null.</summary>
    public static UnsafeRule? Fitting(RequestWords request)
    {
        Span<bool> begun = stackalloc bool[All.Length];
        for (var at = 0; at < request.Count; at++)
        {
            foreach (var key in request.KeysAt(at))
            {
                foreach (var place in ByFirst.GetValueOrDefault(key, []))
                    begun[place] = true;
            }
        }
        for (var place = 0; place < All.Length; place++)
        {
            if (begun[place] && All[place].Fits(request))
                return All[place];
        }
        return null;
    }
}
