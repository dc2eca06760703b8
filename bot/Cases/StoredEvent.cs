using System.Collections.Immutable;
using DxAssistant.Cases.Log;
using DxAssistant.Conversation.Events;

namespace DxAssistant.Cases;

/// <summary>One event as it stands in the log.</summary>
/// <param name="Sequence">Counts from 1 within the case, without gaps.</param>
/// <param name="TurnId">The turn it belongs to.</param>
/// <param name="At">When the store took it, UTC, whole milliseconds.</param>
public sealed record StoredEvent(long Sequence, string TurnId, DateTimeOffset At, CaseEvent Event)
{
    /// <summary>The hash of the log up to and with this event, in lower-case hexadecimal.</summary>
    public string Hash { get; init; } = "";

    /// <summary>Events with the rows they were written to.</summary>
    internal static ImmutableArray<StoredEvent> Of(ImmutableArray<LogRow> rows, ImmutableArray<CaseEvent> events) =>
        [.. rows.Zip(events, (row, e) => new StoredEvent(row.Sequence, row.TurnId, row.At, e) { Hash = row.Hash })];
}
