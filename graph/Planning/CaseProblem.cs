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
    /// <summary>Faults less likely than this are left out of planning: together they are not worth a minute.</summary>
    public const double Negligible = 1e-6;

    /// <exception cref="ArgumentException">The situation names an access state that is not in the graph.</exception>
    public static CaseProblem From(FaultGraph graph, Belief belief, Situation situation)
    {
        ImmutableArray<Fault> faults =
        [
            .. belief.Ranked.Where(ranked => ranked.Probability > Negligible).OrderBy(ranked => ranked.Id)
                .Select(ranked => new Fault(ranked.Id, ranked.Probability)),
        ];
        if (faults.IsEmpty) return new CaseProblem(null, []);
        AccessStates access = graph.Access.OpenTo(situation.Who, situation.Access, situation.RefusedAccess);
        ImmutableArray<Check> checks = PlannableChecks(graph, faults, belief, situation, access);
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
        FaultGraph graph, ImmutableArray<Fault> faults, Belief belief, Situation situation, AccessStates access)
    {
        int[] places = [.. faults.Select(fault => graph.Likelihoods.PlaceOf(fault.Id))];
        HashSet<CheckId> notAgain =
        [
            .. situation.BarredChecks,
            .. belief.Ledger.Select(line => line.Evidence).OfType<Evidence.OutcomeSeen>().Select(seen => seen.Check),
        ];
        return
        [
            .. graph.Checks
                .Where(check => situation.Who.May(check.Who) && !notAgain.Contains(check.Id)
                    && graph.Likelihoods.Separates(graph.Likelihoods.PlaceOf(check.Id), places))
                .Select(check => check with { Access = [.. check.Access.Where(access.Contains)] })
                .Where(check => !check.Access.IsEmpty),
        ];
    }
}
