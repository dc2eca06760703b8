using DxAssistant.Graph.Planning.Baselines;

namespace DxAssistant.Graph.Planning;

/// <summary>What to ask somebody who can mend nothing more, so that whoever comes next brings the right part.</summary>
public static class Triage
{
    /// <summary>
    /// Fewer bits of doubt taken away than this are not worth a question; common practice, no source.
    /// </summary>
    public const double LeastGain = 0.1;

    /// <summary>
    /// Fewer bits a minute than this are not worth the time on the telephone; common practice, no source.
    /// </summary>
    public const double LeastGainPerMinute = 0.035;

    /// <summary>The check that takes most doubt away for its price; null when none is worth asking.</summary>
    /// <param name="leastGain">Bits; 0 or more.</param>
    /// <param name="leastGainPerMinute">Bits a minute; 0 or more.</param>
    public static PlannedStep.DoCheck? Next(
        SequencingProblem problem, double leastGain = LeastGain, double leastGainPerMinute = LeastGainPerMinute)
    {
        Position position = problem.Begin();
        int best = -1;
        double bestRate = leastGainPerMinute;
        foreach (int check in CommonRules.UsefulChecks(problem, position))
        {
            double gain = Doubt.Gain(problem, position, check);
            double rate = gain / problem.CheckTable.Price(position.State, check);
            if (gain >= leastGain && rate > bestRate + CommonRules.Tie) (best, bestRate) = (check, rate);
        }

        return best < 0 ? null : (PlannedStep.DoCheck)CommonRules.DoCheck(problem, position, best);
    }
}
