namespace DxAssistant.Conversation.Events;

/// <summary>The case began.</summary>
/// <param name="ContentVersion">The version of the content it is walked on.</param>
public sealed record Opened(string ContentVersion) : CaseEvent;
