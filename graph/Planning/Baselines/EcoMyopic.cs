namespace DxAssistant.Graph.Planning.Baselines;

/// <summary>
/// One step ahead: a check is done when finishing by repairs alone is cheaper after it, its own price included.
/// </summary>
/// <remarks>
/// Source: Heckerman, Breese and Rommelse, Decision-theoretic troubleshooting, CACM 38(3), 1995 (from memory).
/// </remarks>
public sealed class EcoMyopic : IPolicy
{
    private static readonly RepairOnly Afterwards = new();

    /// <exception cref="ArgumentException">The problem asks for no repair.</exception>
    public PlannedStep Next(SequencingProblem problem, Position position)
    {
        if (problem.Objective == Objective.Isolate)
            throw new ArgumentException("means nothing without repairs", nameof(problem));
        PolicyEvaluator finish = new(problem, Afterwards);
        double now = finish.Minutes(position), least = double.PositiveInfinity;
        int best = -1;
        foreach (int check in CommonRules.UsefulChecks(problem, position))
        {
            double minutes = MinutesThrough(problem, position, check, finish);
            if (minutes < least - CommonRules.Tie) (best, least) = (check, minutes);
        }

        return best >= 0 && least < now - CommonRules.Tie
            ? CommonRules.DoCheck(problem, position, best)
            : CommonRules.BestRepair(problem, position);
    }

    private static double MinutesThrough(
        SequencingProblem problem, Position position, int check, PolicyEvaluator finish)
    {
        int access = problem.CheckTable.CheapestAccess(position.State, check);
        return problem.CheckTable.Price(position.State, check) + finish.MinutesAfterCheck(position, check, access);
    }
}
