using System.Collections.Immutable;

namespace DxAssistant.Conversation.Replies;

/// <summary>The numbers that chose a step.</summary>
/// <param name="Step">The check or repair.</param>
/// <param name="Minutes">
/// Expected minutes to a verified repair with this step first, wrong parts at their price; at most so many.
/// </param>
/// <param name="LowerBound">No order of steps takes fewer expected minutes.</param>
/// <param name="RunnerUp">The next best first step; null when there is none.</param>
/// <param name="RunnerUpMinutes">
/// Expected minutes with that first, a check reckoned as far ahead as the step; at most so many.
/// </param>
/// <param name="Answers">What each answer would do, in the order of the page; empty for a repair.</param>
public sealed record WhyFigures(
    string Step, double Minutes, double LowerBound, string? RunnerUp, double? RunnerUpMinutes,
    ImmutableArray<WhyAnswer> Answers);
