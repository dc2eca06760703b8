namespace DxAssistant.Graph.Planning.Search;

/// <summary>The most that checks can be worth to a plan when each bit of doubt they take away is paid for.</summary>
internal sealed class CheckWorth(SequencingProblem problem)
{
    // A bit dearer than so many times the dearest check: then every check is worth doing, and nothing new is learnt.
    private const double Enough = 64;

    private readonly CheckTable checks = problem.CheckTable;
    private readonly RepairTable repairs = problem.RepairTable;
    private readonly int faults = problem.Faults.Length;
    private readonly double[] bits = new double[problem.Faults.Length * problem.Checks.Length];
    private readonly double[] detours = new double[problem.Faults.Length * problem.Checks.Length];
    private readonly int[] order = new int[problem.Faults.Length * problem.Checks.Length];
    private readonly int[] offered = new int[problem.Checks.Length];
    private int count;

    /// <summary>Past this price of a bit, in minutes, the bound only falls.</summary>
    public double DearestBit { get; private set; }

    /// <summary>Chooses the position.</summary>
    public void Prepare(ReadOnlySpan<double> weights, ReadOnlySpan<ulong> useful, int state)
    {
        count = 0;
        DearestBit = 0;
        for (int check = 0; check < checks.Count; check++)
        {
            if (!useful.Has(check)) continue;
            offered[count] = check;
            WeighBits(count * faults, check, weights);
            DearestBit = Math.Max(DearestBit, Enough * checks.Price(state, check));
            for (int fault = 0; fault < faults; fault++)
                detours[fault * checks.Count + count] = Detour(check, fault, state);
            count++;
        }

        for (int fault = 0; fault < faults; fault++) SortByDetour(fault);
    }

    /// <summary>At most so many minutes' worth of bits more than the checks cost, on average.</summary>
    public double Minutes(double price, ReadOnlySpan<double> weights)
    {
        double minutes = 0;
        for (int fault = 0; fault < faults; fault++)
            if (weights[fault] > 0) minutes += weights[fault] * Best(price, fault);
        return minutes;
    }

    // All checks within some detour: the longest of them is made once, however many are done.
    private double Best(double price, int fault)
    {
        double best = 0, sum = 0;
        int row = fault * checks.Count;
        for (int place = 0; place < count; place++)
        {
            int number = order[row + place];
            sum += Math.Max(0, price * bits[number * faults + fault] - checks.MinutesBesideWays[offered[number]]);
            best = Math.Max(best, sum - detours[row + place]);
        }

        return best;
    }

    // log₂ of likelihood over average likelihood, averaged over what the check shows under the fault.
    private void WeighBits(int row, int check, ReadOnlySpan<double> weights)
    {
        bits.AsSpan(row, faults).Clear();
        for (int outcome = 0; outcome < checks.Outcomes(check); outcome++)
        {
            ReadOnlySpan<double> column = checks.Column(check, outcome);
            double average = checks.Probability(check, outcome, weights);
            if (!(average > double.Epsilon)) continue;
            for (int fault = 0; fault < faults; fault++)
                if (weights[fault] > 0 && column[fault] > 0)
                    bits[row + fault] += column[fault] * Logarithm.Base2(column[fault] / average);
        }
    }

    // How much longer the way to the repair of the fault gets when it leads through the check.
    private double Detour(int check, int fault, int state)
    {
        bool repairing = problem.Objective == Objective.Repair;
        double least = double.PositiveInfinity;
        foreach (int access in checks.Access(check))
            least = Math.Min(least, problem.Travel[state * problem.StateCount + access]
                + (repairing ? repairs.Floors(access)[fault] : 0));
        return Math.Max(0, repairing ? least - repairs.Floors(state)[fault] : least);
    }

    private void SortByDetour(int fault)
    {
        int row = fault * checks.Count;
        for (int place = 0; place < count; place++) order[row + place] = place;
        detours.AsSpan(row, count).Sort(order.AsSpan(row, count));
    }
}
