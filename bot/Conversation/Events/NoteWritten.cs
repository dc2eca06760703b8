namespace DxAssistant.Conversation.Events;

/// <summary>A note about the job.</summary>
public sealed record NoteWritten(string By, string Text) : AsideEvent(By);
