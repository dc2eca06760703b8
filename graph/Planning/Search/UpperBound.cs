namespace DxAssistant.Graph.Planning.Search;

/// <summary>Expected minutes of a simple plan that is always at hand.</summary>
internal sealed class UpperBound(SequencingProblem problem, SearchSetting setting)
{
    // In smaller problems a search gets to the end, and does so sooner with a bound that costs little.
    private readonly bool isLarge = problem.IsLarge;
    private readonly RepairsOnly repairsOnly = new(problem);
    private readonly OneCheckThenRepairs oneCheck = new(problem, setting.Listed);
    private readonly EvenSplits evenSplits = new(problem);

    /// <summary>Tells the position whose successors will be asked about next.</summary>
    public void Prepare(ReadOnlySpan<double> weights, ReadOnlySpan<ulong> useful)
    {
        if (isLarge && problem.Objective == Objective.Repair) oneCheck.Prepare(weights, useful);
    }

    /// <summary>Never less than the least expected minutes from here.</summary>
    /// <param name="weights">Sum to 1.</param>
    public double From(ReadOnlySpan<double> weights, ReadOnlySpan<ulong> useful, int state)
    {
        if (problem.Objective == Objective.Isolate) return evenSplits.From(weights, useful, state);
        return isLarge ? oneCheck.From(weights, useful, state) : repairsOnly.From(weights, 1, state);
    }
}
