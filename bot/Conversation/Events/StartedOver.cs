namespace DxAssistant.Conversation.Events;

/// <summary>The person began anew.</summary>
public sealed record StartedOver : CaseEvent;
