namespace DxAssistant.Graph.Planning.Search;

/// <summary>
/// The plan of <see cref="RepairsOnly"/> where repairs overlap or end in different states: made step by step.
/// </summary>
internal sealed class SortedRepairs(SequencingProblem problem)
{
    // So little of the mass left is the rounding of sums, not a fault.
    private const double Nothing = 1e-13;

    private readonly RepairTable repairs = problem.RepairTable;
    private readonly double[] left = new double[problem.Faults.Length];
    private readonly double[] cures = new double[problem.Repairs.Length];
    private readonly int[] useful = new int[problem.Repairs.Length];
    private readonly double[] ranks = new double[problem.Repairs.Length];
    private double mass;
    private double minutes;
    private int count;

    /// <summary>Its expected minutes, times the sum of the weights.</summary>
    public double From(ReadOnlySpan<double> weights, double sum, int state)
    {
        weights.CopyTo(left);
        (mass, minutes, count) = (sum, 0, 0);
        double nothing = Nothing * sum;
        for (int repair = 0; repair < repairs.Count; repair++)
            if ((cures[repair] = repairs.Cures(repair, left)) > 0) useful[count++] = repair;
        while (count > 0 && mass > nothing)
        {
            if (state == repairs.SettledState) return FromSettled(state, nothing);
            int place = Best(state), done = useful[place];
            useful.AsSpan(place + 1, --count - place).CopyTo(useful.AsSpan(place));
            Do(done, state);
            state = repairs.StateAfter(repairs.CheapestAccess(state, done));
        }

        return minutes;
    }

    // Once every repair ends where the next begins, prices stay as they are: what cures most for its price is sorted
    // once, and only repairs that share a fault with one that failed move back.
    private double FromSettled(int state, double nothing)
    {
        ReadOnlySpan<double> speeds = repairs.Speeds(state);
        for (int place = 0; place < count; place++)
            Insert(useful[place], cures[useful[place]] * speeds[useful[place]], place);
        for (int place = 0; place < count && mass > nothing; place++)
        {
            int done = useful[place];
            if (!(cures[done] > 0)) continue;
            Do(done, state);
            foreach (int other in repairs.Overlapping(done)) MoveBack(other, place + 1, speeds[other]);
        }

        return minutes;
    }

    // Sorted by insertion: repairs of one rank stay in their order, and the few dozen of a case are soon sorted.
    private void Insert(int repair, double rank, int place)
    {
        for (; place > 0 && ranks[place - 1] < rank; place--)
            (useful[place], ranks[place]) = (useful[place - 1], ranks[place - 1]);
        (useful[place], ranks[place]) = (repair, rank);
    }

    private void MoveBack(int repair, int from, double speed)
    {
        int place = useful.AsSpan(from, count - from).IndexOf(repair);
        if (place < 0) return;
        double rank = cures[repair] * speed;
        for (place += from; place + 1 < count && ranks[place + 1] > rank; place++)
            (useful[place], ranks[place]) = (useful[place + 1], ranks[place + 1]);
        (useful[place], ranks[place]) = (repair, rank);
    }

    private void Do(int repair, int state)
    {
        minutes += mass * repairs.Price(state, repair) + Math.Max(0, mass - cures[repair]) * repairs.Wrong(repair);
        mass -= cures[repair];
        ReadOnlySpan<int> overlapping = repairs.Overlapping(repair);
        if (overlapping.IsEmpty) return;
        foreach (int fault in repairs.Fixes(repair)) left[fault] = 0;
        foreach (int other in overlapping) cures[other] = repairs.Cures(other, left);
    }

    private int Best(int state)
    {
        ReadOnlySpan<double> speeds = repairs.Speeds(state);
        (int best, double bestRate) = (0, -1);
        for (int place = 0; place < count; place++)
        {
            double rate = cures[useful[place]] * speeds[useful[place]];
            if (rate > bestRate) (best, bestRate) = (place, rate);
        }

        return best;
    }
}
