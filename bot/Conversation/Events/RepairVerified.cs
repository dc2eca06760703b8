using System.Collections.Immutable;

namespace DxAssistant.Conversation.Events;

/// <summary>The unit was tried after a repair.</summary>
/// <param name="Fault">The most likely fault among those the repair cures.</param>
public sealed record RepairVerified(string Repair, string Fault, bool Works) : CaseEvent
{
    /// <summary>
    /// The other faults that it may have been as well, when the checks did not tell them apart; likeliest first.
    /// </summary>
    public ImmutableArray<string> OrFaults { get; init; } = [];

    /// <summary>
    /// The faults still in question where the unit works though none was proven, likeliest first; null where the cure
    /// proves one.
    /// </summary>
    public ImmutableArray<string>? InQuestion { get; init; }
}
