using System.Collections.Immutable;

namespace DxAssistant.Conversation.Events;

/// <summary>A check gave a result.</summary>
/// <param name="Outcome">The outcome, or null when the readings leave it open between several.</param>
/// <param name="Weights">
/// How well the result fits each outcome of the check, in the order of its page; at least one over 0.
/// </param>
/// <param name="Verdict">The verdict of the readings; null when the outcome was tapped.</param>
/// <param name="Words">What was said or read.</param>
public sealed record OutcomeSeen(string Check, string? Outcome, ImmutableArray<double> Weights, string? Verdict,
    string Words) : CaseEvent
{
    /// <summary>
    /// The access state in which the check left the unit; null when that is where it was done, or when the result was
    /// told and not asked for.
    /// </summary>
    public string? Leaves { get; init; }
}
