namespace DxAssistant.Graph.Planning.Search;

/// <summary>
/// The better of two plans: repairs only, or one check before them. Only the checks that promise most are tried.
/// </summary>
/// <param name="mostListed">
/// Of many checks, so many that tell most for their minutes at a position are tried at its successors: there they do so
/// too.
/// </param>
internal sealed class OneCheckThenRepairs(SequencingProblem problem, int mostListed)
{
    // Three were found to do nearly as well as all, at a fraction of the work.
    private const int Tried = 3;

    // What is broken off early is more than enough by this many minutes, however its last bits are rounded.
    private const double Margin = 1e-6;

    private readonly CheckTable checks = problem.CheckTable;
    private readonly double nearness = 1 + problem.Travel.Max() / 4;
    private readonly RepairsOnly repairsOnly = new(problem);
    private readonly double[] after = new double[problem.Faults.Length];
    private readonly int[] promising = new int[Tried];
    private readonly double[] promises = new double[Tried];
    private readonly double[] weighed = new double[problem.Faults.Length];
    private readonly double[] clarities = new double[problem.Checks.Length];
    private readonly double[] keys = new double[problem.Checks.Length];
    private readonly int[] order = new int[problem.Checks.Length];
    private readonly int[] list = new int[Math.Min(mostListed, problem.Checks.Length)];
    private int listed;
    private double unclear;

    /// <summary>Chooses the checks to try at the successors of a position.</summary>
    public void Prepare(ReadOnlySpan<double> weights, ReadOnlySpan<ulong> useful)
    {
        int count = 0;
        for (int check = 0; check < checks.Count; check++)
            if (useful.Has(check)) order[count++] = check;
        if (count > mostListed)
        {
            WeighClarity(weights);
            // Every access state weighs the way to a check differently; an even share of the longest stands for all.
            for (int place = 0; place < count; place++)
                keys[place] = -ClarityOf(order[place], weights) / (checks.Minutes[order[place]] + nearness);
            keys.AsSpan(0, count).Sort(order.AsSpan(0, count));
            order.AsSpan(0, mostListed).Sort();
        }

        listed = Math.Min(count, mostListed);
        order.AsSpan(0, listed).CopyTo(list);
    }

    /// <summary>Its expected minutes.</summary>
    /// <param name="weights">Sum to 1.</param>
    public double From(ReadOnlySpan<double> weights, ReadOnlySpan<ulong> useful, int state)
    {
        double least = repairsOnly.From(weights, 1, state);
        int count = FindPromising(weights, useful, state, least);
        for (int place = 0; place < count; place++)
            least = Math.Min(least, Through(promising[place], weights, state, least));
        return least;
    }

    /// <summary>Minutes when the check goes first; broken off once they exceed <paramref name="enough"/>.</summary>
    private double Through(int check, ReadOnlySpan<double> weights, int state, double enough)
    {
        double minutes = checks.Price(state, check);
        int access = checks.StateAfter(check, checks.CheapestAccess(state, check));
        for (int outcome = 0; outcome < checks.Outcomes(check) && minutes < enough; outcome++)
            if (Lanes.Multiply(weights, checks.Column(check, outcome), after) is > 0 and double probability)
                minutes += repairsOnly.From(after, probability, access, enough + Margin - minutes);
        return minutes;
    }

    private int FindPromising(ReadOnlySpan<double> weights, ReadOnlySpan<ulong> useful, int state, double enough)
    {
        WeighClarity(weights);
        int count = 0;
        foreach (int check in list.AsSpan(0, listed))
        {
            if (!useful.Has(check) || checks.Price(state, check) >= enough) continue;
            double price = Math.Max(checks.Price(state, check), SequencingProblem.Same);
            if (count == Tried && MostClear / price <= promises[Tried - 1]) continue;
            double promise = ClarityOf(check, weights) / price;
            int place = Math.Min(count, Tried - 1);
            if (count == Tried && promise <= promises[place]) continue;
            for (; place > 0 && promise > promises[place - 1]; place--)
                (promising[place], promises[place]) = (promising[place - 1], promises[place - 1]);
            (promising[place], promises[place]) = (check, promise);
            count = Math.Min(count + 1, Tried);
        }

        return count;
    }

    // Often asked about the same weights in one state after the other: clarity does not depend on the state.
    private void WeighClarity(ReadOnlySpan<double> weights)
    {
        if (weights.SequenceEqual(weighed)) return;
        weights.CopyTo(weighed);
        Array.Fill(clarities, double.NaN);
        unclear = 0;
        foreach (double weight in weights) unclear -= weight * weight;
    }

    // What a check would be that leaves no doubt, and somewhat more than rounding adds.
    private double MostClear => 1 + unclear + Margin;

    private double ClarityOf(int check, ReadOnlySpan<double> weights) =>
        double.IsNaN(clarities[check]) ? clarities[check] = Clarity(check, weights) : clarities[check];

    /// <summary>
    /// How much the check raises the chance that two guesses at the fault agree: clearer without a logarithm.
    /// </summary>
    private double Clarity(int check, ReadOnlySpan<double> weights)
    {
        double clearer = unclear;
        for (int outcome = 0; outcome < checks.Outcomes(check); outcome++)
        {
            (double mass, double squares) = Lanes.DotAndSquares(weights, checks.Column(check, outcome));
            if (mass > 0) clearer += squares / mass;
        }

        return clearer;
    }
}
