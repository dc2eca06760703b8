namespace DxAssistant.Graph.Planning.Search;

/// <summary>Expected minutes of a simple plan that is always at hand.</summary>
internal sealed class UpperBound(SequencingProblem problem)
{
    private readonly RepairsOnly repairsOnly = new(problem);
    private readonly EvenSplits evenSplits = new(problem);

    /// <summary>Never less than the least expected minutes from here.</summary>
    /// <param name="weights">Sum to 1.</param>
    public double From(ReadOnlySpan<double> weights, ReadOnlySpan<ulong> useful, int state) =>
        problem.Objective == Objective.Repair
            ? repairsOnly.From(weights, state)
            : evenSplits.From(weights, useful, state);
}
