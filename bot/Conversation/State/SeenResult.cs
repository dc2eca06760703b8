using System.Collections.Immutable;
using DxAssistant.Conversation.Events;

namespace DxAssistant.Conversation.State;

/// <summary>The result of one check, as evidence and for the record.</summary>
/// <param name="Outcome">Null when the readings leave it open between several.</param>
/// <param name="Weights">How well the result fits each outcome of the check.</param>
/// <param name="Readings">The readings behind it; empty when the outcome was tapped.</param>
public sealed record SeenResult(
    string Check,
    string? Outcome,
    ImmutableArray<double> Weights,
    string? Verdict,
    string Words,
    ImmutableArray<GivenReading> Readings);
