using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Calculations;

/// <summary>Names for cases at the edge of a topic: the calculation is the one whose inputs were given.</summary>
internal static class EdgeCalculations
{
    private static readonly ImmutableSortedDictionary<string, ImmutableArray<string>> Topics =
        new Dictionary<string, ImmutableArray<string>>(StringComparer.Ordinal)
        {
            ["cap-edge"] = ["cap-load", "cap-tol", "cap-factor", "dc-bus", "dc-bus-3ph", "fan-tacho", "slip",
                "sync-speed"],
            ["ntc-edge"] = ["ntc-beta-t", "ntc-beta-r", "ntc-table", "ntc-b", "ntc-sh-t", "ntc-sh-fit", "ntc-alpha",
                "ntc-interp"],
            ["psy-edge"] = ["psy-rh", "psy-wb", "psy-moist-air", "psy-w-from-pv", "psy-psat"],
            ["ref-edge"] = ["ref-tsat", "superheat", "ref-sat-r410a", "gauge-alt-error", "press-conv", "atm-alt"],
            ["unb-edge"] = ["unb-nema", "unb-iec", "unb-cur", "unb-derate", "unb-heat", "unb-current-rule"],
        }.ToImmutableSortedDictionary(StringComparer.Ordinal);

    /// <summary>The names, ordinal.</summary>
    public static IEnumerable<string> Names => Topics.Keys;

    /// <summary>The calculation meant; the topic's first when none fits better. Null when the name is none of
    /// these.</summary>
    public static Calculation? For(string name, IEnumerable<string> given, IReadOnlyDictionary<string,
        Calculation> byName)
    {
        if (!Topics.TryGetValue(name, out var candidates))
            return null;
        var names = given.ToImmutableSortedSet(StringComparer.Ordinal);
        // Most inputs in common, then fewest left over; the order of the topic breaks ties.
        return candidates.Select(candidate => byName[candidate])
            .OrderByDescending(calculation => calculation.Inputs.Count(input => names.Contains(input.Name)))
            .ThenBy(calculation => calculation.Inputs.Length).First();
    }
}
