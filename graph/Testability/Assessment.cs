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

    /// <summary>How each symptom is really walked; null when it is walked as the policy says.</summary>
    public Func<SymptomId, WalkedBy>? Walked { get; init; }

    /// <summary>Told each symptom as it is done, how many are, and how many there are.</summary>
    public Action<SymptomId, int, int>? Progress { get; init; }

    /// <summary>The figures of each symptom and of the whole graph.</summary>
    /// <param name="walks">Walks to play for each symptom whose figures are not exact; 0 or more.</param>
    /// <param name="applicable">The faults the unit can have; null means all.</param>
    public TestabilityReport Assess(int walks, ulong seed, IReadOnlySet<FaultId>? applicable = null)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(walks);
        ImmutableArray<RankedFault> all = [.. graph.Believe([], applicable).Ranked.OrderBy(fault => fault.Id)];
        ImmutableArray<(Symptom Symptom, int Number)> shown =
            [.. graph.Symptoms.Select((symptom, number) => (symptom, number))
                .Where(each => IsShown(each.symptom, applicable))];
        ImmutableArray<SymptomFigures>.Builder figures = ImmutableArray.CreateBuilder<SymptomFigures>(shown.Length);
        foreach ((Symptom symptom, int number) in shown)
        {
            figures.Add(Assess(symptom, walks, SeedOf(seed, number), applicable));
            Progress?.Invoke(symptom.Id, figures.Count, shown.Length);
        }

        return new TestabilityReport(
            seed, figures.MoveToImmutable(),
            [.. AmbiguityGroups.Of(graph, all, Permitted()).Where(group => group.Faults.Length > 1)]);
    }

    // Each symptom draws from a seed of its own, so that one more symptom does not change the figures before it.
    private static ulong SeedOf(ulong seed, int number) => seed + (ulong)number * 0xD1B5_4A32_D192_ED03;

    private static bool IsShown(Symptom symptom, IReadOnlySet<FaultId>? applicable) =>
        symptom.Causes.Keys.Any(fault => fault != FaultId.NoneOfThese
            && (applicable is null || applicable.Contains(fault)));

    private SymptomFigures Assess(Symptom symptom, int walks, ulong seed, IReadOnlySet<FaultId>? applicable)
    {
        Belief belief = graph.Believe([new Evidence.SymptomReported(symptom.Id)], applicable);
        ImmutableArray<RankedFault> faults =
            [.. belief.Ranked.Where(fault => fault.Probability > 0).OrderBy(fault => fault.Id)];
        WalkedBy? walked = Walked?.Invoke(symptom.Id);
        ImmutableArray<Check> checks = Permitted();
        HashSet<FaultId> seen = [.. checks.SelectMany(check => graph.FaultsSeenBy(check.Id)).Select(fault => fault.Id)];
        double weight = symptom.Causes.Where(cause => applicable is null || applicable.Contains(cause.Key))
            .Sum(cause => graph.Find(cause.Key)!.Weight * cause.Value);
        Situation asked = walked?.Situation ?? situation;
        SequencingProblem? problem =
            CaseProblem.From(graph, belief, asked with { Objective = Objective.Repair }).Problem;
        Plan? plan = problem is null ? null : (policy as IPlanner)?.Plan(problem, problem.Begin());
        return new SymptomFigures(
            symptom.Id, weight, faults.Length,
            faults.Where(fault => seen.Contains(fault.Id)).Sum(fault => fault.Probability),
            AmbiguityGroups.Of(graph, faults, checks), LookAlikes.Of(graph, faults, checks),
            LookAlikes.Worst(graph, faults, checks, SymptomFigures.MostMistaken), problem is null
                ? null
                : Walk(problem, walked?.Laid ?? policy, walks, seed),
            plan?.LowerBound, plan?.Minutes, problem is null || walked is null || walks == 0
                ? null
                : Compare(problem, walked, walks, seed));
    }

    private static LaidFigures Compare(SequencingProblem problem, WalkedBy walked, int walks, ulong seed)
    {
        Draws units = new(seed);
        double leftUnfound = walked.Situation.HandOverMinutes;
        SessionSimulation laid = new(problem, walked.Laid, units, leftUnfound), plain =
            new(problem, walked.Plain, units, leftUnfound);
        return LaidFigures.Of([.. Enumerable.Range(0, walks).Select(_ => units.Next())
            .Select(unit => (laid.Play(unit), plain.Play(unit)))]);
    }

    private WalkFigures? Walk(SequencingProblem problem, IPolicy walking, int walks, ulong seed)
    {
        RememberedPolicy remembered = new(problem, walking);
        if (MostPositions > 0 && new ExactWalks(problem, remembered, MostPositions).Figures() is { } exact)
            return exact;
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
