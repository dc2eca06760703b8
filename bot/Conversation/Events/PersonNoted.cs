namespace DxAssistant.Conversation.Events;

/// <summary>A person of the job; takes the place of what was noted of them before.</summary>
/// <param name="Person">Counts from 1 within the job.</param>
/// <param name="Part">What they have to do with it, such as <c>owner</c>.</param>
public sealed record PersonNoted(string By, int Person, string Part, string Name, string? Phone) : AsideEvent(By);
