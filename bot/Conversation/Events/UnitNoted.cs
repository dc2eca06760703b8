namespace DxAssistant.Conversation.Events;

/// <summary>
/// A unit of the job as it stands on its plate and in its papers; takes the place of what was noted of it before.
/// </summary>
/// <param name="Unit">Counts from 1 within the job.</param>
/// <param name="Series">Null where it was not told, as are the rest.</param>
/// <param name="Serial">As the pattern of the series writes it.</param>
/// <param name="Site">Where it stands.</param>
public sealed record UnitNoted(
    string By, int Unit, string? Series, string? Model, string? Serial, DateOnly? Installed, string? Site)
    : AsideEvent(By);
