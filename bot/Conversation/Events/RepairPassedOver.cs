namespace DxAssistant.Conversation.Events;

/// <summary>A repair cannot be made here.</summary>
public sealed record RepairPassedOver(string Repair) : CaseEvent;
