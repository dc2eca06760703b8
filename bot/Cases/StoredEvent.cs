using DxAssistant.Conversation.Events;

namespace DxAssistant.Cases;

/// <summary>One event as it stands in the log.</summary>
/// <param name="Sequence">Counts from 1 within the case, without gaps.</param>
/// <param name="TurnId">The turn it belongs to.</param>
/// <param name="At">When the store took it, UTC, whole milliseconds.</param>
public sealed record StoredEvent(long Sequence, string TurnId, DateTimeOffset At, CaseEvent Event);
