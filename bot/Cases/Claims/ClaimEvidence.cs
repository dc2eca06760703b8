using System.Collections.Immutable;
using DxAssistant.Conversation.Replies;

namespace DxAssistant.Cases.Claims;

/// <summary>One check with its result, as a claim shows it.</summary>
/// <param name="Demanded">Whether the fault's page demands it.</param>
/// <param name="Settled">Whether the result says one thing; false when readings were too close to call.</param>
/// <param name="Answer">What was said or read.</param>
/// <param name="Verdict">The verdict of the readings; null when the outcome was tapped.</param>
/// <param name="Healthy">Whether a healthy unit reads so; null where that is not said.</param>
/// <param name="Expected">What a healthy unit reads.</param>
/// <param name="Source">Where the expectation comes from; null when nothing was measured.</param>
public sealed record ClaimEvidence(
    string Check, string Title, bool Demanded, bool Settled, DateTimeOffset At, string Answer, string? Verdict,
    bool? Healthy, ImmutableArray<ShownReading> Readings, ImmutableArray<string> Expected, string? Source);
