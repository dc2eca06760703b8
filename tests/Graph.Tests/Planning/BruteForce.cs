using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;

namespace DxAssistant.Graph.Tests.Planning;

/// <summary>
/// The recursion of sequencing.md written down as it stands there, and the price of a part changed for nothing: no
/// bounds, no memory, ids instead of numbers, nothing of the planner's own tables.
/// </summary>
internal static class BruteForce
{
    public static double Minutes(SequencingProblem problem) => Least(
        problem, problem.Faults.ToDictionary(fault => fault.Id, fault => fault.Weight),
        [.. problem.Checks], problem.Access.Start);

    private static double Least(
        SequencingProblem problem, Dictionary<FaultId, double> weights, List<Check> unused, AccessId here)
    {
        if (weights.Count == 0) return 0;
        if (problem.Objective == Objective.Isolate && weights.Count == 1) return 0;
        double mass = weights.Values.Sum(), least = double.PositiveInfinity;
        foreach (Check check in unused)
            foreach (AccessId access in check.Access)
                least = Math.Min(least, mass * (problem.Access.Minutes(here, access) + check.Minutes)
                    + check.Outcomes.Sum(outcome => Least(
                        problem, After(weights, check, outcome), [.. unused.Where(other => other != check)],
                        check.Leaves ?? access)));
        if (problem.Objective == Objective.Isolate) return least;
        foreach (Repair repair in problem.Repairs.Where(repair => repair.Fixes.Any(weights.ContainsKey)))
            foreach (AccessId access in repair.Access)
            {
                AccessId verify = problem.Access.Verify ?? access;
                Dictionary<FaultId, double> left =
                    weights.Where(fault => !repair.Fixes.Contains(fault.Key)).ToDictionary();
                least = Math.Min(least, mass * (problem.Access.Minutes(here, access) + repair.Minutes
                    + problem.Access.Minutes(access, verify) + repair.VerifyMinutes)
                    + left.Values.Sum() * repair.WrongMinutes + Least(problem, left, unused, verify));
            }

        return least;
    }

    private static Dictionary<FaultId, double> After(
        Dictionary<FaultId, double> weights, Check check, OutcomeId outcome) =>
        weights.Select(
            fault => KeyValuePair.Create(fault.Key, fault.Value * check.Row(fault.Key)[check.IndexOf(outcome)]))
            .Where(fault => fault.Value > 0).ToDictionary();
}
