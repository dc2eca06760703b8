namespace DxAssistant.Conversation.Events;

/// <summary>The person goes no further and leaves the rest to somebody else.</summary>
public sealed record LeftToOthers : CaseEvent;
