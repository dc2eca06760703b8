namespace DxAssistant.Conversation.Events;

/// <summary>
/// What a whole message told was confirmed, or put aside as a whole; what counts of it follows as events of its own.
/// </summary>
public sealed record ToldSettled : CaseEvent;
