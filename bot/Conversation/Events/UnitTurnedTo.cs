namespace DxAssistant.Conversation.Events;

/// <summary>From here on the work is at this unit of the job.</summary>
public sealed record UnitTurnedTo(string By, int Unit) : AsideEvent(By);
