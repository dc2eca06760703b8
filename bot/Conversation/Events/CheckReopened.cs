namespace DxAssistant.Conversation.Events;

/// <summary>The result of a check is put aside, or that it was left out; it will be taken again.</summary>
public sealed record CheckReopened(string Check) : CaseEvent;
