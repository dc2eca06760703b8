using System.Collections.Immutable;
using DxAssistant.Conversation.Events;

namespace DxAssistant.Cases.Jobs;

/// <summary>What was written down about a job last, and can be taken back.</summary>
/// <param name="Turn">The turn of it.</param>
/// <param name="What"><c>unit</c>, <c>turned</c>, <c>person</c>, <c>note</c>, <c>begun</c> or <c>ended</c>.</param>
public sealed record JobChange(string Turn, string What, DateTimeOffset At, string By)
{
    /// <summary>The last change of a log that stands; null when there is none.</summary>
    /// <param name="standing">The log without what was taken back.</param>
    internal static JobChange? Last(ImmutableArray<StoredEvent> standing)
    {
        for (int i = standing.Length - 1; i >= 0; i--)
            if (standing[i].Event is AsideEvent aside && WhatOf(aside) is { } what)
                return new JobChange(standing[i].TurnId, what, standing[i].At, aside.By);
        return null;
    }

    /// <summary>A log without what was taken back, and without the taking back.</summary>
    internal static ImmutableArray<StoredEvent> Standing(ImmutableArray<StoredEvent> log)
    {
        var gone = log.Select(stored => stored.Event).OfType<AsideTakenBack>().Select(taken => taken.Turn)
            .ToHashSet(StringComparer.Ordinal);
        return gone.Count == 0 ? log
            : [.. log.Where(stored => stored.Event is not AsideTakenBack
                && !(stored.Event is AsideEvent && gone.Contains(stored.TurnId)))];
    }

    // A photo is removed for good, and who was let in is taken out: both stand in the log.
    private static string? WhatOf(AsideEvent aside) => aside switch
    {
        UnitNoted => "unit",
        UnitTurnedTo => "turned",
        PersonNoted => "person",
        NoteWritten => "note",
        VisitBegun => "begun",
        VisitEnded => "ended",
        _ => null,
    };
}
