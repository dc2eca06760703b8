namespace DxAssistant.Graph.Planning.Search;

/// <summary>The doubt that has to be taken away before it pays to try a repair.</summary>
/// <remarks>
/// Faults that share a repair need not be told apart: they are one class. With u summing to U over the classes, and for
/// each class u(1 − ε) + εU ≤ 1, where ε = 2^(−C/λ) and C is what a failed repair of the class costs, no belief at
/// which a repair is tried holds more bits, weighed by log₂ u, than that failure pays for at λ minutes a bit.
/// </remarks>
internal sealed class FirstRepair
{
    private readonly bool isNeeded;
    private readonly int[] classOf;
    private readonly double[] failures;
    private readonly double[] shares;
    private readonly double[] odds;

    public FirstRepair(SequencingProblem problem)
    {
        isNeeded = problem.Objective == Objective.Isolate;
        classOf = [.. Enumerable.Range(0, problem.Faults.Length)];
        failures = new double[classOf.Length];
        Array.Fill(failures, double.PositiveInfinity);
        (shares, odds) = (new double[classOf.Length], new double[classOf.Length]);
        if (isNeeded) return;
        for (int repair = 0; repair < problem.Repairs.Length; repair++) Join(problem.RepairTable.Fixes(repair));
        for (int repair = 0; repair < problem.Repairs.Length; repair++) EnterFailure(problem.RepairTable, repair);
    }

    /// <summary>Chooses the belief.</summary>
    public void Prepare(ReadOnlySpan<double> weights)
    {
        Array.Clear(shares);
        for (int fault = 0; fault < weights.Length; fault++) shares[classOf[fault]] += weights[fault];
    }

    /// <summary>
    /// Bits that a plan has to pay for at so many minutes a bit; null when failed repairs cost too little to tell.
    /// </summary>
    public double? Bits(double price)
    {
        double inverses = 0, ratios = 0;
        for (int group = 0; group < shares.Length; group++)
        {
            if (!(shares[group] > 0)) continue;
            odds[group] = PowerOfHalf(failures[group] / price);
            if (odds[group] >= 1) return null;
            inverses += 1 / (1 - odds[group]);
            ratios += odds[group] / (1 - odds[group]);
        }

        return Bits(sum: inverses / (1 + ratios));
    }

    // The equations of all classes are met at once when the shares sum to this.
    private double? Bits(double sum, double bits = 0)
    {
        for (int group = 0; group < shares.Length; group++)
        {
            if (!(shares[group] > 0)) continue;
            double part = (1 - odds[group] * sum) / (1 - odds[group]);
            if (!(part > 0)) return null;
            bits += shares[group] * Logarithm.Base2(part / shares[group]);
        }

        return bits;
    }

    // The chord between whole powers lies above the curve, which is the safe side.
    private static double PowerOfHalf(double power)
    {
        if (power >= 1000) return 0;
        int whole = (int)power;
        return Math.ScaleB(1 - (power - whole) / 2, -whole);
    }

    private void Join(ReadOnlySpan<int> together)
    {
        foreach (int fault in together)
        {
            (int from, int to) = (classOf[fault], classOf[together[0]]);
            for (int other = 0; other < classOf.Length; other++)
                if (classOf[other] == from) classOf[other] = to;
        }
    }

    private void EnterFailure(RepairTable repairs, int repair)
    {
        int group = classOf[repairs.Fixes(repair)[0]];
        failures[group] = Math.Min(failures[group], repairs.Minutes[repair] + repairs.Wrong(repair));
    }
}
