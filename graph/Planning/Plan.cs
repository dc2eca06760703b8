using System.Collections.Immutable;

namespace DxAssistant.Graph.Planning;

/// <summary>The next step and the numbers that chose it.</summary>
/// <param name="Minutes">Expected minutes to the end when the plan is followed; at most this many.</param>
/// <param name="LowerBound">No plan takes fewer expected minutes.</param>
/// <param name="IsExact">
/// True when the two are equal, so that no better plan exists. False when the work ran out before.
/// </param>
/// <param name="Options">Everything that could be done next, best first; the first is the plan's own step.</param>
/// <param name="Work">How many positions were weighed.</param>
public sealed record Plan(
    PlannedStep Step, double Minutes, double LowerBound, bool IsExact, ImmutableArray<PlanOption> Options, int Work);
