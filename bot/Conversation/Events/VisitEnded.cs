namespace DxAssistant.Conversation.Events;

/// <summary>A visit is over.</summary>
public sealed record VisitEnded(string By, int Visit) : AsideEvent(By);
