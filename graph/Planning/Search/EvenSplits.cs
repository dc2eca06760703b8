namespace DxAssistant.Graph.Planning.Search;

/// <summary>
/// The plan that always does the check whose outcomes are most evenly likely for its price, until one fault is left.
/// </summary>
internal sealed class EvenSplits(SequencingProblem problem)
{
    // Past so many positions the rest is bounded by doing every useful check.
    private const int MostPositions = 48;

    private readonly CheckTable checks = problem.CheckTable;
    private int positions;

    /// <summary>Its expected minutes, or somewhat more.</summary>
    /// <param name="weights">Sum to 1.</param>
    public double From(ReadOnlySpan<double> weights, ReadOnlySpan<ulong> useful, int state)
    {
        positions = 0;
        return Split(weights, useful, state);
    }

    private double Split(ReadOnlySpan<double> weights, ReadOnlySpan<ulong> unused, int state)
    {
        if (weights.LiveFaults() < 2) return 0;
        int best = BestSplit(weights, unused, state);
        if (best < 0) return 0;
        if (++positions > MostPositions) return EveryCheck(unused, state);
        Span<ulong> rest = stackalloc ulong[unused.Length];
        unused.CopyTo(rest);
        rest[best >> 6] &= ~(1UL << (best & 63));
        double[] next = new double[weights.Length];
        double minutes = checks.Price(state, best);
        for (int outcome = 0; outcome < checks.Outcomes(best); outcome++)
            if (checks.Update(best, outcome, weights, next) is > 0 and double probability)
                minutes += probability * Split(next, rest, checks.StateAfter(best, checks.CheapestAccess(state, best)));
        return minutes;
    }

    private int BestSplit(ReadOnlySpan<double> weights, ReadOnlySpan<ulong> unused, int state)
    {
        int best = -1;
        double bestRate = 0;
        for (int check = 0; check < checks.Count; check++)
        {
            if (!unused.Has(check) || !checks.Separates(check, weights)) continue;
            double rate = Evenness(check, weights) / Math.Max(checks.Price(state, check), SequencingProblem.Same);
            if (best < 0 || rate > bestRate) (best, bestRate) = (check, rate);
        }

        return best;
    }

    private double Evenness(int check, ReadOnlySpan<double> weights)
    {
        double evenness = 1;
        for (int outcome = 0; outcome < checks.Outcomes(check); outcome++)
        {
            double probability = checks.Probability(check, outcome, weights);
            evenness -= probability * probability;
        }

        return evenness;
    }

    private double EveryCheck(ReadOnlySpan<ulong> unused, int state)
    {
        double minutes = 0;
        for (int check = 0; check < checks.Count; check++)
        {
            if (!unused.Has(check)) continue;
            minutes += checks.Price(state, check);
            state = checks.StateAfter(check, checks.CheapestAccess(state, check));
        }

        return minutes;
    }
}
