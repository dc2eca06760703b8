namespace DxAssistant.Conversation.Events;

/// <summary>What the display shows, told before the series is known.</summary>
public sealed record CodeReported(string Code, string? Look) : CaseEvent;
