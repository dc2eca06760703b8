using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;

namespace DxAssistant.Graph.Tests.Planning.Fresh;

/// <summary>
/// A walk driven from outside, each step planned anew from what was seen, what is excluded and how the unit stands,
/// costs what the policy is reckoned to cost.
/// </summary>
public sealed class DrivenWalkTests
{
    private readonly LivePlanner planner = new();

    [Theory]
    [InlineData("perfect", 1)]
    [InlineData("noisy", 1)]
    [InlineData("noisy", 2)]
    [InlineData("access", 1)]
    [InlineData("access", 2)]
    [InlineData("tryfirst", 1)]
    [InlineData("flipflop", 1)]
    public void Minutes_FreshProblem_AreWhatDrivingTheWalkCosts(string kind, int seed)
    {
        SequencingProblem problem = Make(kind, seed);

        double driven = Drive(problem, new Told([], [], problem.Begin().Access));

        Assert.Equal(new PolicyEvaluator(problem, planner).Minutes(problem.Begin()), driven, tolerance: 1e-9);
    }

    private static SequencingProblem Make(string kind, int seed) => kind switch
    {
        "perfect" => RandomKinds.Perfect(seed),
        "noisy" => RandomKinds.Noisy(seed),
        "access" => RandomKinds.Access(seed),
        "tryfirst" => BuiltTraps.TryFirst(seed),
        _ => BuiltTraps.FlipFlop(seed),
    };

    private double Drive(SequencingProblem problem, Told told) => planner.Next(problem, At(problem, told)) switch
    {
        PlannedStep.DoCheck step =>
            problem.Access.Minutes(told.Standing, step.Access) + AfterCheck(problem, told, step),
        PlannedStep.DoRepair step =>
            problem.Access.Minutes(told.Standing, step.Access) + AfterRepair(problem, told, step),
        _ => throw new InvalidOperationException("the walk ends before the repair"),
    };

    private double AfterCheck(SequencingProblem problem, Told told, PlannedStep.DoCheck step)
    {
        Check check = problem.Checks.First(known => known.Id == step.Check);
        double minutes = check.Minutes, mass = Mass(problem, told);
        foreach (OutcomeId outcome in check.Outcomes)
        {
            Told then = told with { Seen = told.Seen.Add((step.Check, outcome)), Standing = step.Access };
            double share = Mass(problem, then) / mass;
            if (share > 0) minutes += share * Drive(problem, then);
        }

        return minutes;
    }

    private double AfterRepair(SequencingProblem problem, Told told, PlannedStep.DoRepair step)
    {
        Repair repair = problem.Repairs.First(known => known.Id == step.Repair);
        AccessId after = problem.Access.Verify ?? step.Access;
        double minutes = repair.Minutes + problem.Access.Minutes(step.Access, after) + repair.VerifyMinutes;
        Told then = told with { Excluded = told.Excluded.Union(repair.Fixes), Standing = after };
        double share = Mass(problem, then) / Mass(problem, told);
        return share > 0 ? minutes + share * Drive(problem, then) : minutes;
    }

    private static Position At(SequencingProblem problem, Told told)
    {
        Position position = problem.Begin();
        foreach ((CheckId check, OutcomeId outcome) in told.Seen) position = position.Saw(check, outcome);
        foreach (FaultId fault in told.Excluded) position = position.Excluding(fault);
        return position.At(told.Standing);
    }

    // Reckoned apart from the planner's own tables.
    private static double Mass(SequencingProblem problem, Told told) => problem.Faults
        .Where(fault => !told.Excluded.Contains(fault.Id))
        .Sum(fault => told.Seen.Aggregate(fault.Weight,
            (weight, seen) => weight * Likelihood(problem, fault.Id, seen.Check, seen.Outcome)));

    private static double Likelihood(SequencingProblem problem, FaultId fault, CheckId id, OutcomeId outcome)
    {
        Check check = problem.Checks.First(known => known.Id == id);
        return check.Row(fault)[check.IndexOf(outcome)];
    }

    private sealed record Told(
        ImmutableArray<(CheckId Check, OutcomeId Outcome)> Seen, ImmutableSortedSet<FaultId> Excluded,
        AccessId Standing);
}
