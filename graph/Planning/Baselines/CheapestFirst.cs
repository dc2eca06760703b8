namespace DxAssistant.Graph.Planning.Baselines;

/// <summary>The useful check of lowest price, getting there included.</summary>
public sealed class CheapestFirst : CheckThenRepair
{
    private protected override double Score(SequencingProblem problem, Position position, int check) =>
        -problem.CheckTable.Price(position.State, check);
}
