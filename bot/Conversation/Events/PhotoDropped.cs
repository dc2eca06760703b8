namespace DxAssistant.Conversation.Events;

/// <summary>A photo was taken out of the job again; its bytes are gone, that it was there is not.</summary>
public sealed record PhotoDropped(string By, string Hash) : AsideEvent(By);
