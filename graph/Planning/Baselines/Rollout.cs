namespace DxAssistant.Graph.Planning.Baselines;

/// <summary>
/// Every step in every access state, followed by a simple policy to the end: the step for which that is cheapest.
/// </summary>
/// <remarks>
/// The simple policy is <see cref="EcoMyopic"/> where there are repairs, else <see cref="InfoGainPerCost"/>.
/// Remembers what it reckoned for the last problem, so one object serves one thread.
/// </remarks>
public sealed class Rollout : IPolicy
{
    private SequencingProblem? reckoned;
    private PolicyEvaluator? afterwards;

    public PlannedStep Next(SequencingProblem problem, Position position)
    {
        PolicyEvaluator rest = Afterwards(problem);
        PlannedStep best = new PlannedStep.Nothing();
        double least = double.PositiveInfinity;
        if (problem.Objective == Objective.Isolate && CommonRules.IsConfident(problem, position)) return best;
        foreach ((PlannedStep step, double minutes) in Steps(problem, position, rest))
            if (minutes < least - CommonRules.Tie) (best, least) = (step, minutes);
        return best;
    }

    private static IEnumerable<(PlannedStep Step, double Minutes)> Steps(
        SequencingProblem problem, Position position, PolicyEvaluator rest)
    {
        foreach (int check in CommonRules.UsefulChecks(problem, position))
            foreach (int access in problem.CheckTable.Access(check).ToArray())
                yield return (
                    new PlannedStep.DoCheck(problem.Checks[check].Id, CommonRules.AccessAt(problem, access)),
                    problem.Travel[position.State * problem.StateCount + access] + problem.CheckTable.Minutes[check]
                    + rest.MinutesAfterCheck(position, check, access));
        if (problem.Objective == Objective.Isolate) yield break;
        for (int repair = 0; repair < problem.Repairs.Length; repair++)
        {
            if (problem.RepairTable.Cures(repair, position.WeightSpan) <= 0) continue;
            foreach (int access in problem.RepairTable.Access(repair).ToArray())
                yield return (
                    new PlannedStep.DoRepair(problem.Repairs[repair].Id, CommonRules.AccessAt(problem, access)),
                    problem.RepairTable.Price(position.State, repair, access)
                    + rest.MinutesAfterRepair(position, repair, access));
        }
    }

    private PolicyEvaluator Afterwards(SequencingProblem problem)
    {
        if (afterwards is not null && ReferenceEquals(problem, reckoned)) return afterwards;
        reckoned = problem;
        IPolicy simple = problem.Objective == Objective.Repair ? new EcoMyopic() : new InfoGainPerCost();
        return afterwards = new PolicyEvaluator(problem, simple);
    }
}
