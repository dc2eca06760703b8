namespace DxAssistant.Conversation.Events;

/// <summary>The last answer was taken back.</summary>
public sealed record TookBack : CaseEvent;
