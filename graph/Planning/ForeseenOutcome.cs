using DxAssistant.Graph.Model;

namespace DxAssistant.Graph.Planning;

/// <summary>One thing a check may show, and where that would lead.</summary>
/// <param name="Probability">Above 0, at most 1.</param>
/// <param name="After">The position then; its weights, normalised, are the belief then.</param>
public sealed record ForeseenOutcome(OutcomeId Outcome, double Probability, Position After);
