namespace DxAssistant.Graph.Planning.Search;

/// <summary>Everything that can be done at a position, and where it may lead.</summary>
internal sealed class Expansion(SequencingProblem problem, PositionPool pool)
{
    private readonly CheckTable checks = problem.CheckTable;
    private readonly RepairTable repairs = problem.RepairTable;
    private readonly LowerBound lower = new(problem);
    private readonly UpperBound upper = new(problem);
    private readonly double[] weights = new double[problem.Faults.Length];
    private readonly double[] after = new double[problem.Faults.Length];
    private readonly ulong[] useful = new ulong[pool.Words];
    private readonly ulong[] usefulAfter = new ulong[pool.Words];

    public List<SearchAction> Actions { get; } = [];
    public List<Branch> Branches { get; } = [];

    /// <summary>How many positions were weighed: the measure of work.</summary>
    public int Weighed { get; private set; }

    /// <summary>The pool's position for where a session stands.</summary>
    public int Enter(Position position)
    {
        position.WeightSpan.CopyTo(after);
        Weights.Normalise(after);
        ulong[] unused = new ulong[pool.Words];
        for (int check = 0; check < checks.Count; check++)
            if (!position.Used[check]) unused.AsSpan().Put(check);
        return Arrive(unused, -1, position.State);
    }

    /// <summary>Adds the actions of a position: checks in order, then repairs in order.</summary>
    public void Expand(int position)
    {
        // Copies, because the pool may grow and move its arrays.
        pool.Weights(position).CopyTo(weights);
        pool.Useful(position).CopyTo(useful);
        int state = pool.State(position), first = Actions.Count;
        if (!IsFinished(weights))
        {
            for (int check = 0; check < checks.Count; check++)
                if (Bits.Has(useful, check)) AddCheck(check, state);
            if (problem.Objective == Objective.Repair)
                for (int repair = 0; repair < repairs.Count; repair++)
                    if (repairs.Cures(repair, weights) > 0) AddRepair(repair, state);
        }

        pool.FirstAction[position] = first;
        pool.ActionCount[position] = Actions.Count - first;
    }

    private void AddCheck(int check, int state)
    {
        foreach (int access in checks.Access(check))
        {
            int first = Branches.Count;
            for (int outcome = 0; outcome < checks.Outcomes(check); outcome++)
                if (checks.Update(check, outcome, weights, after) is > 0 and double probability && !IsFinished(after))
                    Branches.Add(new Branch(probability, Arrive(useful, check, access)));
            double price = problem.Travel[state * problem.StateCount + access] + checks.Minutes[check];
            Actions.Add(new SearchAction(check, -1, access, price, first, Branches.Count - first));
        }
    }

    private void AddRepair(int repair, int state)
    {
        // Verified in one state, all ways of doing the repair lead there: only the cheapest is of interest.
        if (problem.VerifyState >= 0) AddRepair(repair, state, repairs.CheapestAccess(state, repair));
        else foreach (int access in repairs.Access(repair)) AddRepair(repair, state, access);
    }

    private void AddRepair(int repair, int state, int access)
    {
        int first = Branches.Count;
        double price = repairs.Price(state, repair, access);
        if (repairs.Fail(repair, weights, after) is > 0 and double probability)
        {
            Branches.Add(new Branch(probability, Arrive(useful, -1, repairs.StateAfter(access))));
            price += probability * repairs.Wrong(repair);
        }

        Actions.Add(new SearchAction(-1, repair, access, price, first, Branches.Count - first));
    }

    private bool IsFinished(ReadOnlySpan<double> then) =>
        problem.Objective == Objective.Isolate && then.LiveFaults() == 1;

    private int Arrive(ReadOnlySpan<ulong> available, int used, int state)
    {
        Weighed++;
        usefulAfter.AsSpan().Clear();
        for (int check = 0; check < checks.Count; check++)
            if (check != used && available.Has(check) && checks.Separates(check, after))
                usefulAfter.AsSpan().Put(check);
        if (!pool.Add(after, usefulAfter, state, out int position)) return position;
        pool.Lower[position] = lower.From(after, usefulAfter, state);
        pool.Upper[position] = upper.From(after, usefulAfter, state);
        return position;
    }
}
