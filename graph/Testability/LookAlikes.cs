using System.Collections.Immutable;
using DxAssistant.Graph.Model;

namespace DxAssistant.Graph.Testability;

/// <summary>Which faults may still be taken for one another when every check that may be done was done.</summary>
/// <remarks>
/// Whoever decides between two faults that are equally likely errs in at most half of their Bhattacharyya coefficient,
/// the product of those of the checks, as each check shows what it shows whatever the others did. (Kailath, The
/// divergence and Bhattacharyya distance measures in signal selection, IEEE Trans. Communication Technology 15(1),
/// 1967, from memory.)
/// </remarks>
internal static class LookAlikes
{
    /// <summary>
    /// The coefficient from which on two faults look alike: up to it an error is at most one in twenty.
    /// </summary>
    public const double Least = 0.1;

    /// <summary>Of each fault the group that looks like it, itself included; in the order of the faults.</summary>
    /// <param name="faults">By id.</param>
    /// <param name="checks">Those that may be done.</param>
    public static ImmutableArray<AmbiguityGroup> Of(
        FaultGraph graph, ImmutableArray<RankedFault> faults, IReadOnlyCollection<Check> checks) =>
    [
        .. faults.Select(fault => AmbiguityGroups.ToGroup(
            graph, [.. faults.Where(other => other.Id == fault.Id || Coefficient(fault.Id, other.Id, checks) > Least)])
            with
            {
                Probability = fault.Probability,
            }),
    ];

    /// <summary>
    /// The pairs that are most easily mistaken, the worst first, ties by id; pairs that one repair cures alike are left
    /// out.
    /// </summary>
    /// <param name="faults">By id.</param>
    /// <param name="checks">Those that may be done.</param>
    /// <param name="most">How many pairs at most.</param>
    public static ImmutableArray<MistakenPair> Worst(
        FaultGraph graph, ImmutableArray<RankedFault> faults, IReadOnlyCollection<Check> checks, int most)
    {
        ImmutableArray<FaultId> ids = [.. faults.Select(fault => fault.Id)];
        var alike = ids.SelectMany((one, place) => ids.Skip(place + 1).Select(other => (One: one, Other: other)))
            .Where(pair => !HaveOneRepair(graph, pair.One, pair.Other)
                && Coefficient(pair.One, pair.Other, checks) > Least)
            .Select(pair => new MistakenPair(pair.One, pair.Other,
                Math.Round(LeastError.Between(pair.One, pair.Other, checks), 4)));
        return [.. alike.OrderByDescending(pair => pair.Error).ThenBy(pair => pair.One).ThenBy(pair => pair.Other)
            .Take(most)];
    }

    private static bool HaveOneRepair(FaultGraph graph, FaultId one, FaultId other) =>
        graph.RepairsOf(one).Intersect(graph.RepairsOf(other)).Any();

    /// <summary>1 when no check tells two faults apart, 0 when one does so for certain.</summary>
    public static double Coefficient(FaultId left, FaultId right, IEnumerable<Check> checks)
    {
        double all = 1;
        foreach (Check check in checks)
        {
            (ImmutableArray<double> ours, ImmutableArray<double> theirs) = (check.Row(left), check.Row(right));
            double one = 0;
            for (int outcome = 0; outcome < ours.Length; outcome++) one += Math.Sqrt(ours[outcome] * theirs[outcome]);
            all *= Math.Min(1, one);
            if (all <= Least) break;
        }

        return all;
    }
}
