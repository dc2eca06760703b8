namespace DxAssistant.Conversation.Events;

/// <summary>A repair was made; whether it cured anything is not known yet.</summary>
public sealed record RepairDone(string Repair) : CaseEvent;
