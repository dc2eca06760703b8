using DxAssistant.Graph.Model;

namespace DxAssistant.Graph.Planning.Trees;

/// <summary>One way on from a step.</summary>
/// <param name="Outcome">What the check showed; null when a repair did not help.</param>
/// <param name="Probability">Once the step is done; above 0, at most 1.</param>
public sealed record WalkBranch(OutcomeId? Outcome, double Probability, WalkNode Next);
