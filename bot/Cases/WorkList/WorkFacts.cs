using System.Collections.Immutable;
using DxAssistant.Conversation.Events;

namespace DxAssistant.Cases.WorkList;

/// <summary>What one turn adds to what a work list knows of a case; null leaves what was known.</summary>
/// <param name="Ended">How the case ended with this turn; null when it is open after it.</param>
/// <param name="Words">All that was said, read or chosen in it.</param>
/// <param name="IsAside">Whether the turn is beside the walk, so that the case stands as it stood.</param>
internal sealed record WorkFacts(string? Title, string? Series, string? Fault, string? Ended, string Words,
    bool IsAside)
{
    public static WorkFacts Of(ImmutableArray<CaseEvent> events) => new(
        CaseTitle.Of(events),
        events.OfType<SeriesChosen>().LastOrDefault()?.Series,
        FaultOf(events),
        events.OfType<Closed>().LastOrDefault()?.How,
        WorkWords.Of(events),
        events.All(happened => happened is AsideEvent));

    /// <summary>The turns of a log, each with its time.</summary>
    public static IEnumerable<(DateTimeOffset At,
        ImmutableArray<CaseEvent> Events)> Turns(ImmutableArray<StoredEvent> log) =>
        log.GroupBy(stored => stored.TurnId, StringComparer.Ordinal)
            .Select(turn => (turn.Last().At, turn.Select(stored => stored.Event).ToImmutableArray()));

    private static string? FaultOf(ImmutableArray<CaseEvent> events) =>
        events.OfType<RepairVerified>().LastOrDefault(tried => tried is { Works: true, InQuestion: null })?.Fault
            ?? events.OfType<Replied>().LastOrDefault()?.Reply.Belief.FirstOrDefault()?.Fault;
}
