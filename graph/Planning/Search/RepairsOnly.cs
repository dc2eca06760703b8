namespace DxAssistant.Graph.Planning.Search;

/// <summary>The plan without checks: repair after repair, each time the one that cures most for its price.</summary>
/// <remarks>
/// Where each fault has one repair and all are verified in the same state, the plan need not be made to know its
/// minutes: of two repairs, the one that cures more for its price goes first and is paid when the other would have
/// cured, which is the less of the two cross products of price and chance. The minutes are the sum over all pairs.
/// (Optimality of the order: W. E. Smith, Naval Research Logistics Quarterly 3, 1956, from memory.)
/// </remarks>
internal sealed class RepairsOnly(SequencingProblem problem)
{
    private readonly RepairTable repairs = problem.RepairTable;
    private readonly SortedRepairs sorted = new(problem);
    private readonly double[] cures = new double[problem.Repairs.Length];
    private readonly bool isSumOfPairs = problem.RepairTable is { SettledState: >= 0, AnyOverlap: false };

    /// <summary>Its expected minutes, times the sum of the weights.</summary>
    /// <param name="enough">
    /// So many or more are not reckoned to their end: what is returned then is no less than this.
    /// </param>
    public double From(ReadOnlySpan<double> weights, double mass, int state, double enough = double.PositiveInfinity)
    {
        if (!isSumOfPairs) return sorted.From(weights, mass, state);
        for (int repair = 0; repair < cures.Length; repair++) cures[repair] = repairs.Cures(repair, weights);
        if (state == repairs.SettledState) return Pairs(state, enough);
        int first = First(state);
        double failed = Math.Max(0, mass - cures[first]);
        cures[first] = 0;
        double begun = mass * repairs.Price(state, first) + failed * repairs.Wrong(first);
        return begun + Pairs(repairs.SettledState, enough - begun);
    }

    // Each pair adds to the minutes and never takes from them.
    private double Pairs(int state, double enough)
    {
        ReadOnlySpan<double> burdens = repairs.Burdens(state);
        double minutes = Lanes.Dot(cures, repairs.Prices(state));
        for (int repair = 0; repair < cures.Length - 1 && !(minutes > enough); repair++)
            if (cures[repair] > 0)
                minutes += Lanes.LesserCross(burdens[repair], cures[repair], burdens[(repair + 1)..],
                    cures.AsSpan(repair + 1));
        return minutes;
    }

    private int First(int state)
    {
        ReadOnlySpan<double> speeds = repairs.Speeds(state);
        (int best, double bestRate) = (0, -1);
        for (int repair = 0; repair < cures.Length; repair++)
        {
            double rate = cures[repair] * speeds[repair];
            if (rate > bestRate) (best, bestRate) = (repair, rate);
        }

        return best;
    }
}
