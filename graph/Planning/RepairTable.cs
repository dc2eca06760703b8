namespace DxAssistant.Graph.Planning;

/// <summary>The repairs of a problem in flat arrays.</summary>
internal sealed class RepairTable
{
    private readonly int faults;
    private readonly int states;
    private readonly int verifyState;
    private readonly double[] travel;
    private readonly double[] minutes;
    private readonly double[] wrong;
    private readonly int[] firstAccess;
    private readonly int[] access;
    private readonly int[] firstFixed;
    private readonly int[] fixedFaults;
    private readonly int[] onlyFault;
    private readonly double[] prices;
    private readonly int[] cheapestAccess;
    private readonly double[] floors;
    private readonly double[] burdens;
    private readonly double[] speeds;
    private readonly int[][] overlapping;

    public RepairTable(SequencingProblem problem)
    {
        (faults, states) = (problem.Faults.Length, problem.StateCount);
        (travel, verifyState) = (problem.Travel, problem.VerifyState);
        Count = problem.Repairs.Length;
        minutes = [.. problem.Repairs.Select(repair => repair.Minutes + repair.VerifyMinutes)];
        wrong = [.. problem.Repairs.Select(repair => repair.WrongMinutes)];
        firstAccess = CheckTable.Offsets(problem.Repairs.Select(repair => repair.Access.Length));
        access = [.. problem.Repairs.SelectMany(repair => repair.Access).Select(problem.Access.IndexOf)];
        Dictionary<Model.FaultId, int> places =
            problem.Faults.Select((fault, place) => (fault.Id, place)).ToDictionary();
        firstFixed = CheckTable.Offsets(problem.Repairs.Select(repair => repair.Fixes.Length));
        fixedFaults = [.. problem.Repairs.SelectMany(repair => repair.Fixes).Select(fault => places[fault])];
        onlyFault = [.. problem.Repairs.Select(repair => repair.Fixes.Length == 1 ? places[repair.Fixes[0]] : -1)];
        prices = new double[states * Count];
        cheapestAccess = new int[states * Count];
        floors = new double[states * faults];
        Array.Fill(floors, double.PositiveInfinity);
        for (int state = 0; state < states; state++)
            for (int repair = 0; repair < Count; repair++) EnterPrice(state, repair);
        burdens = [.. prices.Select((price, place) => price + wrong[place % Count])];
        speeds = [.. burdens.Select(burden => 1 / burden)];
        overlapping = [.. problem.Repairs.Select((repair, place) => Enumerable.Range(0, Count)
            .Where(other => other != place && problem.Repairs[other].Fixes.Any(repair.Fixes.Contains)).ToArray())];
        AnyOverlap = overlapping.Any(others => others.Length > 0);
    }

    public int Count { get; }

    /// <summary>Minutes of a repair and its verification, without getting there or to where it is verified.</summary>
    public double[] Minutes => minutes;

    /// <summary>The states in which the repair may be done, in the order listed.</summary>
    public ReadOnlySpan<int> Access(int repair) => access.AsSpan(firstAccess[repair]..firstAccess[repair + 1]);

    /// <summary>The faults the repair cures.</summary>
    public ReadOnlySpan<int> Fixes(int repair) => fixedFaults.AsSpan(firstFixed[repair]..firstFixed[repair + 1]);

    /// <summary>Minutes of the repair from a state, done in the cheapest access state, verification included.</summary>
    public double Price(int state, int repair) => prices[state * Count + repair];

    /// <summary>Minutes of the repair from a state, done in the given access state, verification included.</summary>
    public double Price(int state, int repair, int done) =>
        travel[state * states + done] + minutes[repair] + (verifyState < 0 ? 0 : travel[done * states + verifyState]);

    /// <summary>Minutes that a repair costs on top when it does not cure.</summary>
    public double Wrong(int repair) => wrong[repair];

    /// <summary>The access state behind <see cref="Price(int, int)"/>; the first listed on a tie.</summary>
    public int CheapestAccess(int state, int repair) => cheapestAccess[state * Count + repair];

    /// <summary>Where the unit stands after the repair was verified.</summary>
    public int StateAfter(int done) => verifyState < 0 ? done : verifyState;

    /// <summary>
    /// The state that every repair ends in, so that from there prices stay as they are; −1 when there is none.
    /// </summary>
    public int SettledState => states == 1 ? 0 : verifyState;

    /// <summary>
    /// The price of the cheapest repair of each fault from a state: no way to mend the fault costs less.
    /// </summary>
    public ReadOnlySpan<double> Floors(int state) => floors.AsSpan(state * faults, faults);

    /// <summary>The price of each repair from a state.</summary>
    public ReadOnlySpan<double> Prices(int state) => prices.AsSpan(state * Count, Count);

    /// <summary>The price of each repair from a state when it does not cure.</summary>
    public ReadOnlySpan<double> Burdens(int state) => burdens.AsSpan(state * Count, Count);

    /// <summary>
    /// One over the burden of each repair from a state: of two repairs one after the other, that with the larger
    /// product of speed and chance to cure had better go first.
    /// </summary>
    public ReadOnlySpan<double> Speeds(int state) => speeds.AsSpan(state * Count, Count);

    /// <summary>True when some fault is cured by more than one repair.</summary>
    public bool AnyOverlap { get; }

    /// <summary>The other repairs that cure a fault this one cures.</summary>
    public ReadOnlySpan<int> Overlapping(int repair) => overlapping[repair];

    /// <summary>The sum of the weights of the faults the repair cures.</summary>
    public double Cures(int repair, ReadOnlySpan<double> weights)
    {
        if (onlyFault[repair] >= 0) return weights[onlyFault[repair]];
        double cured = 0;
        foreach (int fault in Fixes(repair)) cured += weights[fault];
        return cured;
    }

    /// <summary>The weights after the repair failed, normalised.</summary>
    /// <returns>P(it fails) when the weights sum to 1; when it is 0, <paramref name="after"/> means nothing.</returns>
    public double Fail(int repair, ReadOnlySpan<double> weights, Span<double> after)
    {
        weights.CopyTo(after);
        foreach (int fault in Fixes(repair)) after[fault] = 0;
        double probability = Weights.Mass(after);
        if (!(probability > 0)) return 0;
        Lanes.Divide(after, probability);
        return probability;
    }

    private void EnterPrice(int state, int repair)
    {
        (double price, int cheapest) = (double.PositiveInfinity, access[firstAccess[repair]]);
        foreach (int done in Access(repair))
        {
            double through = Price(state, repair, done);
            if (through < price - SequencingProblem.Same) (price, cheapest) = (through, done);
        }

        prices[state * Count + repair] = price;
        cheapestAccess[state * Count + repair] = cheapest;
        foreach (int fault in Fixes(repair))
            floors[state * faults + fault] = Math.Min(floors[state * faults + fault], price);
    }
}
