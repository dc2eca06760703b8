namespace DxAssistant.Graph.Planning;

/// <summary>What one rule costs at one step.</summary>
/// <param name="Minutes">The most expected minutes, 0 or more.</param>
public sealed record RuleLoss(string Rule, double Minutes);
