namespace DxAssistant.Conversation.Messages;

/// <summary>One field of a form of readings, as typed.</summary>
public sealed record FilledField(string Label, string Words);
