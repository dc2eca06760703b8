namespace DxAssistant.Conversation.Events;

/// <summary>Somebody who was let into the case works on it no longer.</summary>
public sealed record TakenOut(string By, string Who) : AsideEvent(By);
