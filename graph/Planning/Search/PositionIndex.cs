namespace DxAssistant.Graph.Planning.Search;

/// <summary>
/// Numbers the positions of a problem as they are met; those that no plan can tell apart get the same number.
/// </summary>
internal sealed class PositionIndex
{
    private readonly SequencingProblem problem;
    private readonly PositionPool pool;
    private readonly double[] normalised;
    private readonly ulong[] useful;

    public PositionIndex(SequencingProblem problem)
    {
        this.problem = problem;
        pool = new PositionPool(problem.Faults.Length, problem.Checks.Length);
        normalised = new double[problem.Faults.Length];
        useful = new ulong[pool.Words];
    }

    /// <summary>Finds the position's number, counting from 0, or gives it the next.</summary>
    /// <returns>True when it is new.</returns>
    public bool Add(Position position, out int number)
    {
        position.WeightSpan.CopyTo(normalised);
        Weights.Normalise(normalised);
        useful.AsSpan().Clear();
        for (int check = 0; check < problem.Checks.Length; check++)
            if (!position.Used[check] && problem.CheckTable.Separates(check, normalised)) useful.AsSpan().Put(check);
        return pool.Add(normalised, useful, position.State, out number);
    }
}
