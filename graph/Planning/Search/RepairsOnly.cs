namespace DxAssistant.Graph.Planning.Search;

/// <summary>The plan without checks: repair after repair, each time the one that cures most for its price.</summary>
internal sealed class RepairsOnly(SequencingProblem problem)
{
    // So little mass left is the rounding of sums, not a fault.
    private const double Nothing = 1e-13;

    private readonly RepairTable repairs = problem.RepairTable;
    private readonly double[] left = new double[problem.Faults.Length];
    private readonly double[] cures = new double[problem.Repairs.Length];
    private readonly int[] useful = new int[problem.Repairs.Length];

    /// <summary>Its expected minutes.</summary>
    /// <param name="weights">Sum to 1.</param>
    public double From(ReadOnlySpan<double> weights, int state)
    {
        weights.CopyTo(left);
        int count = 0;
        for (int repair = 0; repair < repairs.Count; repair++)
            if ((cures[repair] = repairs.Cures(repair, left)) > 0) useful[count++] = repair;
        double mass = 1, minutes = 0;
        while (count > 0 && mass > Nothing)
        {
            int best = Best(count, state);
            minutes += mass * repairs.Price(state, best) + Math.Max(0, mass - cures[best]) * repairs.Wrong(best);
            mass -= cures[best];
            state = repairs.StateAfter(repairs.CheapestAccess(state, best));
            foreach (int fault in repairs.Fixes(best)) left[fault] = 0;
            count = StillUseful(count, best);
        }

        return minutes;
    }

    private int Best(int count, int state)
    {
        ReadOnlySpan<double> speeds = repairs.Speeds(state);
        int best = useful[0];
        double bestRate = cures[best] * speeds[best];
        for (int place = 1; place < count; place++)
        {
            double rate = cures[useful[place]] * speeds[useful[place]];
            if (rate > bestRate) (best, bestRate) = (useful[place], rate);
        }

        return best;
    }

    private int StillUseful(int count, int done)
    {
        foreach (int other in repairs.Overlapping(done)) cures[other] = repairs.Cures(other, left);
        cures[done] = 0;
        int kept = 0;
        for (int place = 0; place < count; place++)
            if (cures[useful[place]] > 0) useful[kept++] = useful[place];
        return kept;
    }
}
