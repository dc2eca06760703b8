using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;

namespace DxAssistant.Graph.Testability;

/// <summary>Works out how well the faults of a graph can be found.</summary>
/// <param name="situation">Who is at the unit and how it stands when work begins.</param>
/// <param name="policy">What decides the steps of the sessions.</param>
public sealed class Assessment(FaultGraph graph, Situation situation, IPolicy policy)
{
    /// <summary>The figures of each symptom and of the whole graph.</summary>
    /// <param name="sessions">Sessions to play for each symptom; 0 or more.</param>
    /// <param name="applicable">The faults the unit can have; null means all.</param>
    public TestabilityReport Assess(int sessions, ulong seed, IReadOnlySet<FaultId>? applicable = null)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(sessions);
        ImmutableArray<RankedFault> all = [.. graph.Believe([], applicable).Ranked.OrderBy(fault => fault.Id)];
        return new TestabilityReport(
            seed,
            [
                .. graph.Symptoms.Select((symptom, number) =>
                    Assess(symptom, sessions, SeedOf(seed, number), applicable)),
            ],
            [.. AmbiguityGroups.Of(graph, all, Permitted()).Where(group => group.Faults.Length > 1)]);
    }

    // Each symptom draws from a seed of its own, so that one more symptom does not change the figures before it.
    private static ulong SeedOf(ulong seed, int number) => seed + (ulong)number * 0xD1B5_4A32_D192_ED03;

    private SymptomFigures Assess(Symptom symptom, int sessions, ulong seed, IReadOnlySet<FaultId>? applicable)
    {
        Belief belief = graph.Believe([new Evidence.SymptomReported(symptom.Id)], applicable);
        ImmutableArray<RankedFault> faults =
            [.. belief.Ranked.Where(fault => fault.Probability > 0).OrderBy(fault => fault.Id)];
        ImmutableArray<Check> checks = Permitted();
        HashSet<FaultId> seen = [.. checks.SelectMany(check => graph.FaultsSeenBy(check.Id)).Select(fault => fault.Id)];
        double detected = faults.Where(fault => seen.Contains(fault.Id)).Sum(fault => fault.Probability);
        return new SymptomFigures(
            symptom.Id, faults.Length, detected,
            AmbiguityGroups.Of(graph, faults, checks), Play(belief, sessions, seed));
    }

    private ImmutableArray<SessionTally> Play(Belief belief, int sessions, ulong seed)
    {
        CaseProblem made = CaseProblem.From(graph, belief, situation with { Objective = Objective.Repair });
        if (made.Problem is null) return [];
        SessionSimulation simulation = new(made.Problem, policy, new Draws(seed));
        return [.. Enumerable.Range(0, sessions).Select(_ => simulation.Play())];
    }

    private ImmutableArray<Check> Permitted()
    {
        AccessStates access = graph.Access.OpenTo(situation.Who, situation.Access, situation.RefusedAccess);
        return
        [
            .. graph.Checks.Where(check => situation.Who.May(check.Who) && check.Access.Any(access.Contains)
                && !situation.BarredChecks.Contains(check.Id)),
        ];
    }
}
