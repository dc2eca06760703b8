namespace DxAssistant.Graph.Planning.Search;

/// <summary>Minutes that no plan can do without.</summary>
internal sealed class LowerBound(SequencingProblem problem)
{
    private readonly CheckTable checks = problem.CheckTable;
    private readonly RepairTable repairs = problem.RepairTable;
    private readonly double[] minutes = new double[problem.Checks.Length];
    private readonly bool canTellAllApart = problem.Objective == Objective.Isolate && CanTellAllApart(problem);
    private readonly double[] live = new double[problem.Faults.Length];

    /// <summary>Never more than the least expected minutes from here.</summary>
    /// <param name="weights">Sum to 1.</param>
    public double From(ReadOnlySpan<double> weights, ReadOnlySpan<ulong> useful, int state) =>
        problem.Objective == Objective.Repair
            ? KnownFault(weights, state) + Math.Min(OneMoreCheck(useful), OneRepairInVain(weights))
            : canTellAllApart ? ByHuffman(weights, useful) : 0;

    /// <summary>
    /// Never less than <see cref="From"/>, and more work: what it takes to learn which fault it is counts too.
    /// </summary>
    /// <param name="weights">Sum to 1.</param>
    public double TighterFrom(ReadOnlySpan<double> weights, ReadOnlySpan<ulong> useful, int state)
    {
        double quick = From(weights, useful, state);
        if (problem.Objective == Objective.Isolate && !canTellAllApart) return quick;
        double known = problem.Objective == Objective.Repair ? KnownFault(weights, state) : 0;
        return Math.Max(quick, known + new InformationBound(problem).From(weights, useful, state));
    }

    /// <summary>What it would take if somebody told us the fault.</summary>
    private double KnownFault(ReadOnlySpan<double> weights, int state) => Lanes.Dot(weights, repairs.Floors(state));

    // Not knowing the fault costs at least one more check, or the failure of the repair that is tried first.
    private double OneMoreCheck(ReadOnlySpan<ulong> useful)
    {
        double least = double.PositiveInfinity;
        for (int check = 0; check < checks.Count; check++)
            if (useful.Has(check)) least = Math.Min(least, checks.MinutesBesideWays[check]);
        return least;
    }

    private double OneRepairInVain(ReadOnlySpan<double> weights)
    {
        double least = double.PositiveInfinity;
        for (int repair = 0; repair < repairs.Count; repair++)
        {
            double cured = repairs.Cures(repair, weights);
            if (cured > 0)
                least = Math.Min(least, Math.Max(0, 1 - cured) * (repairs.Minutes[repair] + repairs.Wrong(repair)));
        }

        return least;
    }

    // Huffman's code tells how many checks are needed on average if any split could be had. The cheapest so many checks
    // cost no less, because cost against number of checks is convex (Jensen). A noisy check is a mixture of clean
    // splits, so it does no better. Pattipati and Alexandridis, IEEE Trans. SMC 20(4), 1990, 872-887.
    private double ByHuffman(ReadOnlySpan<double> weights, ReadOnlySpan<ulong> useful)
    {
        int count = 0, faults = 0;
        for (int check = 0; check < checks.Count; check++)
            if (useful.Has(check)) minutes[count++] = checks.Minutes[check];
        foreach (double weight in weights)
            if (weight > 0) live[faults++] = weight;
        minutes.AsSpan(0, count).Sort();
        double needed = Huffman.ExpectedLength(live.AsSpan(0, faults), checks.MostOutcomes);
        double sum = 0;
        for (int check = 0; check < count && needed > 0; check++, needed--) sum += Math.Min(1, needed) * minutes[check];
        return sum;
    }

    // Otherwise a session may end with several faults left, and fewer checks than the code asks for.
    private static bool CanTellAllApart(SequencingProblem problem)
    {
        for (int left = 0; left < problem.Faults.Length; left++)
            for (int right = left + 1; right < problem.Faults.Length; right++)
                if (!CanTellApart(problem.CheckTable, left, right)) return false;
        return true;
    }

    private static bool CanTellApart(CheckTable checks, int left, int right)
    {
        for (int check = 0; check < checks.Count; check++)
            if (checks.NeverAgree(check, left, right)) return true;
        return false;
    }
}
