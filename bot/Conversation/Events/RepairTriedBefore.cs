namespace DxAssistant.Conversation.Events;

/// <summary>A repair was made before the case began, and the trouble is still there.</summary>
/// <param name="Fault">The most likely fault among those the repair cures.</param>
/// <param name="Words">The words that told it.</param>
public sealed record RepairTriedBefore(string Repair, string Fault, string Words) : CaseEvent;
