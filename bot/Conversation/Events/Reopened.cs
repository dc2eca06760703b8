namespace DxAssistant.Conversation.Events;

/// <summary>A closed case goes on. What was found before a repair that worked says nothing of the unit now.</summary>
public sealed record Reopened : CaseEvent;
