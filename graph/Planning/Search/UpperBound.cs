namespace DxAssistant.Graph.Planning.Search;

/// <summary>Expected minutes of a simple plan that is always at hand.</summary>
internal sealed class UpperBound(SequencingProblem problem)
{
    // In smaller problems a search gets to the end, and does so sooner with a bound that costs little.
    private const int Large = 400;

    private readonly bool isLarge = problem.Size > Large;
    private readonly RepairsOnly repairsOnly = new(problem);
    private readonly OneCheckThenRepairs oneCheck = new(problem);
    private readonly EvenSplits evenSplits = new(problem);

    /// <summary>Never less than the least expected minutes from here.</summary>
    /// <param name="weights">Sum to 1.</param>
    public double From(ReadOnlySpan<double> weights, ReadOnlySpan<ulong> useful, int state)
    {
        if (problem.Objective == Objective.Isolate) return evenSplits.From(weights, useful, state);
        return isLarge ? oneCheck.From(weights, useful, state) : repairsOnly.From(weights, state);
    }
}
