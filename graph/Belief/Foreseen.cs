using DxAssistant.Graph.Model;

namespace DxAssistant.Graph;

/// <summary>One thing a check may show, and what would be believed then.</summary>
/// <param name="Probability">That it shows this; above 0, at most 1.</param>
/// <param name="Likeliest">The likeliest fault then.</param>
/// <param name="Share">How likely that fault is then, 0 to 1.</param>
public sealed record Foreseen(OutcomeId Outcome, double Probability, FaultId Likeliest, double Share);
