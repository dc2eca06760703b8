namespace DxAssistant.Graph.Planning.Baselines;

/// <summary>The useful check that takes most doubt away, in bits, for its price.</summary>
public sealed class InfoGainPerCost : CheckThenRepair
{
    private protected override double Score(SequencingProblem problem, Position position, int check) =>
        Doubt.Gain(problem, position, check) / problem.CheckTable.Price(position.State, check);
}
