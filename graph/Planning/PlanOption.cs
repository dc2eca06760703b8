namespace DxAssistant.Graph.Planning;

/// <summary>One thing that could be done next, from its best access state.</summary>
/// <param name="Price">Minutes of the step itself, getting there and verification included.</param>
/// <param name="Minutes">Expected minutes to the end when this is done first; at most this many.</param>
/// <param name="LowerBound">Expected minutes to the end when this is done first; at least this many.</param>
public sealed record PlanOption(PlannedStep Step, double Price, double Minutes, double LowerBound);
