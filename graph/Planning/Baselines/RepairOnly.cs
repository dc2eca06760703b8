namespace DxAssistant.Graph.Planning.Baselines;

/// <summary>Never checks: the repair with the largest P(it cures) / price, updated after each failure.</summary>
public sealed class RepairOnly : IPolicy
{
    public PlannedStep Next(SequencingProblem problem, Position position) => CommonRules.BestRepair(problem, position);
}
