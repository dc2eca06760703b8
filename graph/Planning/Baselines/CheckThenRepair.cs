namespace DxAssistant.Graph.Planning.Baselines;

/// <summary>Checks until confident, then repairs. What differs is which check goes first.</summary>
public abstract class CheckThenRepair : IPolicy
{
    private protected CheckThenRepair() { }

    public PlannedStep Next(SequencingProblem problem, Position position)
    {
        if (CommonRules.IsConfident(problem, position)) return CommonRules.BestRepair(problem, position);
        int best = -1;
        double bestScore = 0;
        foreach (int check in CommonRules.UsefulChecks(problem, position))
        {
            double score = Score(problem, position, check);
            if (best < 0 || score > bestScore + CommonRules.Tie) (best, bestScore) = (check, score);
        }

        return best >= 0 ? CommonRules.DoCheck(problem, position, best) : CommonRules.BestRepair(problem, position);
    }

    /// <summary>How well the check would do as the next one; the higher, the better.</summary>
    private protected abstract double Score(SequencingProblem problem, Position position, int check);
}
