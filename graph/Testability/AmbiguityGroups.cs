using System.Collections.Immutable;
using DxAssistant.Graph.Model;

namespace DxAssistant.Graph.Testability;

/// <summary>Sorts faults by what the checks can see of them.</summary>
internal static class AmbiguityGroups
{
    /// <summary>The groups, by their first fault.</summary>
    /// <param name="faults">By id.</param>
    /// <param name="checks">Those that may be done.</param>
    public static ImmutableArray<AmbiguityGroup> Of(
        FaultGraph graph, ImmutableArray<RankedFault> faults, IReadOnlyCollection<Check> checks)
    {
        List<List<RankedFault>> groups = [];
        foreach (RankedFault fault in faults)
        {
            if (groups.Find(group => LookTheSame(group[0].Id, fault.Id, checks)) is { } alike) alike.Add(fault);
            else groups.Add([fault]);
        }

        return [.. groups.Select(group => ToGroup(graph, group))];
    }

    private static bool LookTheSame(FaultId left, FaultId right, IReadOnlyCollection<Check> checks) =>
        !checks.Any(check => Check.RowsDiffer(check.Row(left), check.Row(right)));

    /// <summary>The group of some faults, with the fewest repairs that cure them all.</summary>
    public static AmbiguityGroup ToGroup(FaultGraph graph, List<RankedFault> group) => new(
        [.. group.Select(fault => fault.Id)], FewestRepairs(graph, group), group.Sum(fault => fault.Probability));

    // The repair that cures most of what is left, until nothing is left; the first by id on a tie.
    private static ImmutableArray<RepairId> FewestRepairs(FaultGraph graph, List<RankedFault> group)
    {
        HashSet<FaultId> left = [.. group.Select(fault => fault.Id)];
        List<RepairId> chosen = [];
        while (left.Count > 0)
        {
            Repair? best = graph.Repairs.MaxBy(repair => repair.Fixes.Count(left.Contains));
            if (best is null || !best.Fixes.Any(left.Contains)) return [];
            chosen.Add(best.Id);
            left.ExceptWith(best.Fixes);
        }

        return [.. chosen.Order()];
    }
}
