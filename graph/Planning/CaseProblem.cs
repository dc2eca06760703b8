using System.Collections.Immutable;
using DxAssistant.Graph.Model;

namespace DxAssistant.Graph.Planning;

/// <summary>The sequencing problem of a case as it stands now.</summary>
/// <remarks>
/// Its priors are the belief, its start is where the unit stands, its checks are those not done yet that this person
/// may do. Faults that no repair can reach are "cured" by <see cref="RepairId.HandOver"/>, so that the plan weighs
/// leaving the case to somebody else against going on.
/// </remarks>
/// <param name="Problem">null when no fault is left in question.</param>
/// <param name="OutOfReach">Why faults cannot be mended here; by fault, then repair.</param>
public sealed record CaseProblem(SequencingProblem? Problem, ImmutableArray<OutOfReach> OutOfReach)
{
    /// <summary>
    /// Faults less likely than this are left out of planning; each step plans anew, so one that grows comes back.
    /// </summary>
    public const double Negligible = 1e-6;

    /// <summary>How likely it is that a fault which was left out is the one, 0 to 1.</summary>
    public double LeftOut { get; init; }

    /// <summary>
    /// The most expected minutes that leaving faults out can cost: under one of them a plan at worst does all that is
    /// left to do, each from farthest away, and is left to somebody else at the end.
    /// </summary>
    /// <remarks>
    /// A plan for the faults that stay in is the best for them, whatever comes under the others; those are met with
    /// probability <see cref="LeftOut"/>, and then nothing is done twice.
    /// </remarks>
    public double MostLost { get; private init; }

    /// <exception cref="ArgumentException">The situation names an access state that is not in the graph.</exception>
    public static CaseProblem From(FaultGraph graph, Belief belief, Situation situation) => From(
        graph, belief.Ranked, belief.Ledger.Select(line => line.Evidence).OfType<Evidence.OutcomeSeen>()
            .Select(seen => seen.Check).ToHashSet().Contains,
        situation);

    /// <summary>The problem as it stands at a position of another one of the same graph.</summary>
    /// <param name="situation">Of the other problem; where the unit stands is the position's to say.</param>
    public static CaseProblem At(FaultGraph graph, SequencingProblem problem, Position here, Situation situation)
    {
        double mass = here.WeightSpan.Mass();
        HashSet<CheckId> open = [.. problem.Checks.Select(check => check.Id).Where(check => !here.IsUsed(check))];
        return From(
            graph,
            [.. problem.Faults.Select((fault, place) => new RankedFault(fault.Id, here.WeightSpan[place] / mass))],
            check => !open.Contains(check), situation with { Access = here.Access });
    }

    private static CaseProblem From(FaultGraph graph, ImmutableArray<RankedFault> ranked, Predicate<CheckId> isDone,
        Situation situation)
    {
        ImmutableArray<Fault> faults =
        [
            .. ranked.Where(fault => fault.Probability > Negligible).OrderBy(fault => fault.Id)
                .Select(fault => new Fault(fault.Id, fault.Probability)),
        ];
        if (faults.IsEmpty) return new CaseProblem(null, []);
        CaseProblem made = Of(graph, faults, isDone, situation);
        double leftOut = ranked.Where(fault => fault.Probability <= Negligible).Sum(fault => fault.Probability);
        return made with { LeftOut = leftOut, MostLost = leftOut * (graph.Everything + situation.HandOverMinutes) };
    }

    private static CaseProblem Of(FaultGraph graph, ImmutableArray<Fault> faults, Predicate<CheckId> isDone,
        Situation situation)
    {
        AccessStates access = graph.Access.OpenTo(situation.Who, situation.Access, situation.RefusedAccess);
        ImmutableArray<Check> checks = PlannableChecks(graph, faults, isDone, situation, access);
        if (situation.Objective == Objective.Isolate)
            return new CaseProblem(
                new SequencingProblem(Objective.Isolate, faults, checks, [], access, graph.Likelihoods), []);
        RepairSelection selection = new(graph, situation, access);
        return new CaseProblem(
            new SequencingProblem(Objective.Repair, faults, checks, selection.For(faults), access, graph.Likelihoods),
            selection.OutOfReach);
    }

    // A check that tells none of the faults apart never will: the walk only rules faults out.
    private static ImmutableArray<Check> PlannableChecks(
        FaultGraph graph, ImmutableArray<Fault> faults, Predicate<CheckId> isDone, Situation situation,
        AccessStates access)
    {
        int[] places = [.. faults.Select(fault => graph.Likelihoods.PlaceOf(fault.Id))];
        return
        [
            .. graph.ChecksOf(faults.Select(fault => fault.Id))
                .Where(check => situation.Who.May(check.Who) && !isDone(check.Id)
                    && !situation.BarredChecks.Contains(check.Id)
                    && graph.Likelihoods.Separates(graph.Likelihoods.PlaceOf(check.Id), places))
                .Select(check => check with { Access = [.. check.Access.Where(access.Contains)] })
                .Where(check => !check.Access.IsEmpty && (check.Leaves is not { } left || access.Contains(left))),
        ];
    }
}
