namespace DxAssistant.Graph.Planning.Baselines;

/// <summary>The flowchart: the first useful check in the order listed.</summary>
public sealed class FixedOrder : CheckThenRepair
{
    private protected override double Score(SequencingProblem problem, Position position, int check) => 0;
}
