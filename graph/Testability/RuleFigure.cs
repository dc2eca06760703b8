namespace DxAssistant.Graph.Testability;

/// <summary>What one rule laid over the plan does in a walk.</summary>
/// <param name="Times">How often it chooses a step, a walk.</param>
/// <param name="Minutes">The most expected minutes that this costs a walk.</param>
/// <param name="HeldBack">At how many steps of a walk its limit keeps it from choosing.</param>
public sealed record RuleFigure(string Rule, Estimate Times, Estimate Minutes, Estimate HeldBack);
