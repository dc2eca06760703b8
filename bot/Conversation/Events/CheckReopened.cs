namespace DxAssistant.Conversation.Events;

/// <summary>The result of a check is put aside; it will be taken again.</summary>
public sealed record CheckReopened(string Check) : CaseEvent;
