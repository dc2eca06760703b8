namespace DxAssistant.Conversation.Events;

/// <summary>The unit was tried after a repair.</summary>
/// <param name="Fault">The most likely fault among those the repair cures.</param>
public sealed record RepairVerified(string Repair, string Fault, bool Works) : CaseEvent;
