namespace DxAssistant.Conversation.Events;

/// <summary>The unit cannot be brought into this state here.</summary>
public sealed record AccessRefused(string Access) : CaseEvent;
