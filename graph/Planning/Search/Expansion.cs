using System.Numerics;

namespace DxAssistant.Graph.Planning.Search;

/// <summary>Everything that can be done at a position, and where it may lead.</summary>
internal sealed class Expansion(SequencingProblem problem, PositionPool pool, SearchSetting setting)
{
    private readonly CheckTable checks = problem.CheckTable;
    private readonly RepairTable repairs = problem.RepairTable;
    private readonly LowerBound lower = new(problem);
    private readonly UpperBound upper = new(problem, setting);
    private readonly double[] weights = new double[problem.Faults.Length];
    private readonly double[] after = new double[problem.Faults.Length];
    private int live;
    private readonly ulong[] useful = new ulong[pool.Words];
    private readonly ulong[] usefulAfter = new ulong[pool.Words];

    public BorrowedList<SearchAction> Actions { get; } = new();
    public BorrowedList<Branch> Branches { get; } = new();

    /// <summary>How many positions were weighed: the measure of work.</summary>
    public int Weighed { get; private set; }

    /// <summary>The pool's position for where a session stands.</summary>
    public int Enter(Position position)
    {
        position.WeightSpan.CopyTo(after);
        Weights.Normalise(after);
        useful.AsSpan().Clear();
        for (int check = 0; check < checks.Count; check++)
            if (!position.Used[check]) useful.AsSpan().Put(check);
        FindUseful(-1);
        upper.Prepare(after, usefulAfter);
        return Arrive(position.State);
    }

    /// <summary>Adds the actions of a position: checks in order, then repairs in order.</summary>
    public void Expand(int position)
    {
        // Copies, because the pool may grow and move its arrays.
        pool.Weights(position).CopyTo(weights);
        pool.Useful(position).CopyTo(useful);
        live = Weights.LiveFaults(weights);
        int state = pool.State(position), first = Actions.Count;
        if (!IsFinished(weights))
        {
            upper.Prepare(weights, useful);
            for (int check = 0; check < checks.Count; check++)
                if (Bits.Has(useful, check)) AddCheck(check, state);
            if (problem.Objective == Objective.Repair)
                for (int repair = 0; repair < repairs.Count; repair++)
                    if (repairs.Cures(repair, weights) > 0) AddRepair(repair, state);
        }

        pool.FirstAction[position] = first;
        pool.ActionCount[position] = Actions.Count - first;
    }

    // Results first, states second: what follows from a result is weighed once for all states it may be had in.
    private void AddCheck(int check, int state)
    {
        ReadOnlySpan<int> states = checks.Access(check);
        int first = Branches.Count, outcomes = checks.Outcomes(check), possible = 0;
        Branches.Add(states.Length * outcomes);
        for (int outcome = 0; outcome < outcomes; outcome++)
        {
            if (checks.Update(check, outcome, weights, after) is not (> 0 and double probability) || IsFinished(after))
                continue;
            FindUseful(check);
            for (int place = 0; place < states.Length; place++)
                Branches.Items[first + place * outcomes + possible] =
                    new Branch(probability, Arrive(checks.StateAfter(check, states[place])));
            possible++;
        }

        for (int place = 0; place < states.Length; place++)
        {
            double price = problem.Travel[state * problem.StateCount + states[place]] + checks.Minutes[check];
            Actions.Add(new SearchAction(check, -1, states[place], price, first + place * outcomes, possible));
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
            FindUseful(-1);
            Branches.Add(new Branch(probability, Arrive(repairs.StateAfter(access))));
            price += probability * repairs.Wrong(repair);
        }

        Actions.Add(new SearchAction(-1, repair, access, price, first, Branches.Count - first));
    }

    /// <summary>Gives back what was borrowed; nothing can be asked afterwards.</summary>
    public void GiveBack()
    {
        Actions.GiveBack();
        Branches.GiveBack();
    }

    private bool IsFinished(ReadOnlySpan<double> then) =>
        problem.Objective == Objective.Isolate && then.LiveFaults() == 1;

    // Of the checks at hand, those that still tell faults apart: as long as no fault is ruled out, all but the one
    // used.
    private void FindUseful(int used)
    {
        if (used >= 0 && Weights.LiveFaults(after) == live)
        {
            useful.CopyTo(usefulAfter, 0);
            usefulAfter[used >> 6] &= ~(1UL << (used & 63));
            return;
        }

        usefulAfter.AsSpan().Clear();
        for (int word = 0; word < useful.Length; word++)
            for (ulong left = useful[word]; left != 0; left &= left - 1)
            {
                int check = (word << 6) + BitOperations.TrailingZeroCount(left);
                if (check != used && checks.Separates(check, after)) usefulAfter.AsSpan().Put(check);
            }
    }

    private int Arrive(int state)
    {
        Weighed++;
        if (!pool.Add(after, usefulAfter, state, out int position)) return position;
        pool.Lower[position] = lower.From(after, usefulAfter, state);
        pool.Upper[position] = upper.From(after, usefulAfter, state);
        return position;
    }
}
