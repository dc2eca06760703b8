using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;

namespace DxAssistant.Graph.Testability;

/// <summary>Works out how well the faults of a graph can be found.</summary>
/// <param name="situation">Who is at the unit and how it stands when work begins.</param>
/// <param name="policy">What decides the steps of the walks.</param>
public sealed class Assessment(FaultGraph graph, Situation situation, IPolicy policy)
{
    /// <summary>
    /// The most positions to go through for exact figures of a symptom; 0 or more. Past them walks are played.
    /// </summary>
    public int MostPositions { get; init; }

    /// <summary>Told each symptom as it is done.</summary>
    public Action<SymptomId>? Progress { get; init; }

    /// <summary>The figures of each symptom and of the whole graph.</summary>
    /// <param name="walks">Walks to play for each symptom whose figures are not exact; 0 or more.</param>
    /// <param name="applicable">The faults the unit can have; null means all.</param>
    public TestabilityReport Assess(int walks, ulong seed, IReadOnlySet<FaultId>? applicable = null)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(walks);
        ImmutableArray<RankedFault> all = [.. graph.Believe([], applicable).Ranked.OrderBy(fault => fault.Id)];
        return new TestabilityReport(
            seed,
            [
                .. graph.Symptoms.Select((symptom, number) => (symptom, number))
                    .Where(each => IsShown(each.symptom, applicable))
                    .Select(each => Assess(each.symptom, walks, SeedOf(seed, each.number), applicable)),
            ],
            [.. AmbiguityGroups.Of(graph, all, Permitted()).Where(group => group.Faults.Length > 1)]);
    }

    // Each symptom draws from a seed of its own, so that one more symptom does not change the figures before it.
    private static ulong SeedOf(ulong seed, int number) => seed + (ulong)number * 0xD1B5_4A32_D192_ED03;

    private static bool IsShown(Symptom symptom, IReadOnlySet<FaultId>? applicable) =>
        symptom.Causes.Keys.Any(fault => fault != FaultId.NoneOfThese && (applicable is null || applicable.Contains(fault)));

    private SymptomFigures Assess(Symptom symptom, int walks, ulong seed, IReadOnlySet<FaultId>? applicable)
    {
        Belief belief = graph.Believe([new Evidence.SymptomReported(symptom.Id)], applicable);
        ImmutableArray<RankedFault> faults =
            [.. belief.Ranked.Where(fault => fault.Probability > 0).OrderBy(fault => fault.Id)];
        ImmutableArray<Check> checks = Permitted();
        HashSet<FaultId> seen = [.. checks.SelectMany(check => graph.FaultsSeenBy(check.Id)).Select(fault => fault.Id)];
        double weight = symptom.Causes.Where(cause => applicable is null || applicable.Contains(cause.Key))
            .Sum(cause => graph.Find(cause.Key)!.Weight * cause.Value);
        SequencingProblem? problem =
            CaseProblem.From(graph, belief, situation with { Objective = Objective.Repair }).Problem;
        Plan? plan = problem is null ? null : (policy as IPlanner)?.Plan(problem, problem.Begin());
        SymptomFigures figures = new(
            symptom.Id, weight, faults.Length,
            faults.Where(fault => seen.Contains(fault.Id)).Sum(fault => fault.Probability),
            AmbiguityGroups.Of(graph, faults, checks), problem is null ? null : Walk(problem, walks, seed),
            plan?.LowerBound, plan?.Minutes);
        Progress?.Invoke(symptom.Id);
        return figures;
    }

    private WalkFigures? Walk(SequencingProblem problem, int walks, ulong seed)
    {
        RememberedPolicy remembered = new(problem, policy);
        if (MostPositions > 0 && new ExactWalks(problem, remembered, MostPositions).Figures() is { } exact) return exact;
        if (walks == 0) return null;
        SessionSimulation simulation = new(problem, remembered, new Draws(seed));
        return WalkFigures.Of([.. Enumerable.Range(0, walks).Select(_ => simulation.Play())]);
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
