using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;

namespace DxAssistant.Graph.Tests.Planning.Trees;

/// <summary>
/// All trees with at most so many checks, gone through one by one: no memory, no tables, ids instead of numbers.
/// </summary>
internal static class LimitedBruteForce
{
    public static double Minutes(SequencingProblem problem, int checks) =>
        Minutes(problem, checks, null, double.PositiveInfinity);

    /// <param name="proof">The check that must be done before a repair.</param>
    /// <param name="leaving">Minutes that it costs to leave the tree.</param>
    public static double Minutes(SequencingProblem problem, int checks, Func<RepairId, CheckId>? proof,
        double leaving) => Least(
        problem,
        problem.Faults.ToDictionary(fault => fault.Id, fault => fault.Weight / problem.Faults.Sum(each => each.Weight)),
        [.. problem.Checks], problem.Access.Start, checks, proof, leaving);

    // Minutes times the sum of the weights.
    private static double Least(
        SequencingProblem problem, Dictionary<FaultId, double> weights, List<Check> unused, AccessId here, int checks,
        Func<RepairId, CheckId>? proof, double leaving)
    {
        if (weights.Count == 0) return 0;
        double mass = weights.Values.Sum(), least = mass * leaving;
        foreach (Repair repair in problem.Repairs.Where(repair => repair.Fixes.Any(weights.ContainsKey)
            && (proof is null || unused.All(check => check.Id != proof(repair.Id) || !check.Separates(weights.Keys)))))
            foreach (AccessId access in repair.Access)
            {
                AccessId verify = problem.Access.Verify ?? access;
                Dictionary<FaultId, double> left = weights.Where(fault => !repair.Fixes.Contains(fault.Key))
                    .ToDictionary();
                least = Math.Min(least, mass * (problem.Access.Minutes(here, access) + repair.Minutes
                    + problem.Access.Minutes(access, verify) + repair.VerifyMinutes)
                    + left.Values.Sum() * repair.WrongMinutes
                    + Least(problem, left, unused, verify, checks, proof, leaving));
            }

        if (checks == 0) return least;
        foreach (Check check in unused)
            foreach (AccessId access in check.Access)
                least = Math.Min(least, mass * (problem.Access.Minutes(here, access) + check.Minutes)
                    + Shared(problem, weights, check, 0, [.. unused.Where(other => other != check)], access, checks - 1,
                        proof, leaving));
        return least;
    }

    private static double Shared(
        SequencingProblem problem, Dictionary<FaultId, double> weights, Check check, int outcome, List<Check> unused,
        AccessId here, int checks, Func<RepairId, CheckId>? proof, double leaving)
    {
        if (outcome == check.Outcomes.Length) return 0;
        Dictionary<FaultId, double> after = weights
            .Select(fault => KeyValuePair.Create(fault.Key, fault.Value * check.Row(fault.Key)[outcome]))
            .Where(fault => fault.Value > 0).ToDictionary();
        return Enumerable.Range(0, checks + 1).Min(part => Least(problem, after, unused, here, part, proof, leaving)
            + Shared(problem, weights, check, outcome + 1, unused, here, checks - part, proof, leaving));
    }
}
