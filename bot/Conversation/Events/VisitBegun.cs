namespace DxAssistant.Conversation.Events;

/// <summary>Somebody is at the unit again, or on the line.</summary>
/// <param name="Visit">Counts from 1 within the job.</param>
public sealed record VisitBegun(string By, int Visit) : AsideEvent(By);
