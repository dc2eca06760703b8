namespace DxAssistant.Conversation.Events;

/// <summary>The case goes on with newer pages.</summary>
public sealed record ContentChanged(string Version) : CaseEvent;
