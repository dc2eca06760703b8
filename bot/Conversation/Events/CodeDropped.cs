namespace DxAssistant.Conversation.Events;

/// <summary>The code that was told means nothing on this series.</summary>
public sealed record CodeDropped : CaseEvent;
