using System.Collections.Immutable;
using DxAssistant.Graph.Model;

namespace DxAssistant.Graph.Planning.Trees;

/// <summary>Writes walks down as a tree, the likeliest places first, until it is as large as it may be.</summary>
/// <param name="next">What to do at a position, when so many checks may still be written down.</param>
public sealed class WalkTree(SequencingProblem problem, Func<Position, int, TreeStep> next)
{
    private readonly PriorityQueue<Spot, (double Share, int Met)> open = new();
    private double everything;
    private int met;

    /// <param name="steps">
    /// Most steps to write down; 0 or more. A smaller tree is the beginning of a larger one.
    /// </param>
    /// <param name="checks">Most checks among them, for a <c>next</c> that keeps to it.</param>
    public WalkNode Grow(int steps, int checks = 0)
    {
        open.Clear();
        Position start = problem.Begin();
        (everything, met) = (start.WeightSpan.Mass(), 0);
        var root = new Spot(start, 1, checks);
        Meet(root);
        for (int order = 0; order < steps && open.TryDequeue(out Spot? spot, out _); order++) Expand(spot, order);
        return Frozen(root);
    }

    // Of two places as likely, the one met first.
    private void Meet(Spot spot) => open.Enqueue(spot, (-Math.Round(spot.Share, 12), met++));

    private void Expand(Spot spot, int order)
    {
        TreeStep chosen = next(spot.Here, spot.ChecksLeft);
        if (chosen.Step is PlannedStep.Nothing) return;
        (spot.Step, spot.Order) = (chosen.Step, order);
        foreach ((OutcomeId? outcome, Position after) in After(spot.Here, chosen.Step))
        {
            int left = spot.Branches.Count < chosen.ChecksLeft.Length ? chosen.ChecksLeft[spot.Branches.Count] : 0;
            var child = new Spot(after, after.WeightSpan.Mass() / everything, left);
            spot.Branches.Add((outcome, child));
            Meet(child);
        }
    }

    // Whoever the case is left to does not come back with it.
    private static IEnumerable<(OutcomeId? Outcome, Position After)> After(Position here, PlannedStep step) =>
        step switch
    {
        PlannedStep.DoCheck check =>
            here.Foresee(check.Check, check.Access).Select(seen => ((OutcomeId?)seen.Outcome, seen.After)),
        PlannedStep.DoRepair repair when repair.Repair != RepairId.HandOver && here.CanFail(repair.Repair) =>
            [(null, here.Failed(repair.Repair, repair.Access))],
        _ => [],
    };

    private WalkNode Frozen(Spot spot)
    {
        (FaultId likeliest, double belief) = Likeliest(spot);
        return new WalkNode(spot.Step, spot.Share, spot.Here.Access, likeliest, belief, spot.Order,
            [.. spot.Branches.Select(branch =>
                new WalkBranch(branch.Outcome, branch.Next.Share / spot.Share, Frozen(branch.Next)))]);
    }

    private (FaultId Fault, double Belief) Likeliest(Spot spot)
    {
        ReadOnlySpan<double> weights = spot.Here.WeightSpan;
        int best = -1;
        for (int fault = 0; fault < weights.Length; fault++)
            if (IsMeant(spot.Step, problem.Faults[fault].Id)
                && (best < 0 || weights[fault] > weights[best] + SequencingProblem.Same))
                best = fault;
        return (problem.Faults[best].Id, weights[best] / weights.Mass());
    }

    private bool IsMeant(PlannedStep? step, FaultId fault) => step is not PlannedStep.DoRepair { Repair: var done }
        || problem.Repairs.First(repair => repair.Id == done).Fixes.Contains(fault);

    private sealed class Spot(Position here, double share, int checksLeft)
    {
        public Position Here { get; } = here;
        public double Share { get; } = share;
        public int ChecksLeft { get; } = checksLeft;
        public PlannedStep? Step { get; set; }
        public int Order { get; set; } = -1;
        public List<(OutcomeId? Outcome, Spot Next)> Branches { get; } = [];
    }
}
