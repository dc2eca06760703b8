namespace DxAssistant.Conversation.Events;

/// <summary>The language in which the case goes on.</summary>
/// <param name="Language">Two letters (ISO 639-1).</param>
public sealed record LanguageChosen(string Language) : CaseEvent;
