using System.Collections.Immutable;
using DxAssistant.Cases.Log;
using DxAssistant.Conversation.Events;

namespace DxAssistant.Cases;

/// <summary>One turn waiting to be written.</summary>
internal sealed record AppendRequest(
    string CaseId, long ExpectedSequence, string TurnId, ImmutableArray<CaseEvent> Events,
    ImmutableArray<EntryText> Entries)
{
    /// <summary>Completed once the transaction that holds it is on disk.</summary>
    public TaskCompletionSource<AppendResult> Done { get; } = new(TaskCreationOptions.RunContinuationsAsynchronously);

    /// <summary>Throws when a caller passed something that no log can hold.</summary>
    public static void Check(string caseId, long expectedSequence, string turnId, ImmutableArray<CaseEvent> events)
    {
        ArgumentException.ThrowIfNullOrEmpty(caseId);
        ArgumentException.ThrowIfNullOrEmpty(turnId);
        ArgumentOutOfRangeException.ThrowIfNegative(expectedSequence);
        if (events.IsDefaultOrEmpty) throw new ArgumentException("a turn has at least one event", nameof(events));
    }
}
