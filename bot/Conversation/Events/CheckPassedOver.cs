using DxAssistant.Conversation.Messages;

namespace DxAssistant.Conversation.Events;

/// <summary>A check was left out: skipped, cannot be done here, or unclear.</summary>
public sealed record CheckPassedOver(string Check, CommandWord Reason) : CaseEvent
{
    /// <summary>
    /// The access state in which the check left the unit, where it was done and told nothing; else null.
    /// </summary>
    public string? Leaves { get; init; }
}
