using System.Collections.Immutable;
using DxAssistant.Conversation;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;

namespace DxAssistant.Cases;

/// <summary>Takes messages for cases: reads the log, works out the turn, appends it.</summary>
/// <param name="current">The core to use now; asked anew for each message, so that content may change under a running
/// desk.</param>
public sealed class CaseDesk(ICaseStore store, Func<IResponder> current)
{
    /// <summary>The turn id of every opening, so that opening a case twice is one turn.</summary>
    public const string OpeningTurn = "opening";

    // Each lost race means that another turn of the same case was stored, so this many in a row is a fault, not
    // traffic.
    private const int MostRaces = 100;

    /// <summary>Opens a case; one that is open already gives its first reply again.</summary>
    public async Task<DeskAnswer.Answered> OpenAsync(string caseId, string by, CancellationToken cancel = default)
    {
        var opening = new Message(OpeningTurn, new MessageBody.Opening(), by);
        var answer = await TurnAsync(caseId, opening, mayOpen: true, null, cancel);
        return (DeskAnswer.Answered)answer;
    }

    /// <summary>Takes one message of an open case.</summary>
    /// <param name="only">The last sequence number the message is meant for; null for whatever is there.</param>
    /// <exception cref="ArgumentException">The turn bears the opening's name.</exception>
    public Task<DeskAnswer> TakeAsync(string caseId, Message message, long? only = null, CancellationToken cancel = default) =>
        message.TurnId == OpeningTurn
            ? throw new ArgumentException($"a message may not have the turn id {OpeningTurn}", nameof(message))
            : TurnAsync(caseId, message, mayOpen: false, only, cancel);

    /// <summary>All events of a case; empty when there is no such case.</summary>
    public Task<ImmutableArray<StoredEvent>> ReadAsync(string caseId, CancellationToken cancel = default) =>
        store.ReadAsync(caseId, cancel);

    private async Task<DeskAnswer> TurnAsync(string caseId, Message message, bool mayOpen, long? only, CancellationToken cancel)
    {
        using var whole = Signals.Stage("turn");
        try
        {
            return await RaceAsync(caseId, message, mayOpen, only, cancel);
        }
        catch
        {
            Signals.Ended(TurnEnd.Failed);
            throw;
        }
    }

    private async Task<DeskAnswer> RaceAsync(string caseId, Message message, bool mayOpen, long? only, CancellationToken cancel)
    {
        for (int race = 0; race < MostRaces; race++)
        {
            var log = await LogAsync(caseId, cancel);
            if (log.IsEmpty && !mayOpen) return new DeskAnswer.UnknownCase(caseId);
            var earlier = log.Where(e => e.TurnId == message.TurnId).ToImmutableArray();
            if (!earlier.IsEmpty) return Answer(caseId, earlier, repeated: true);
            if (only is { } meant && meant != log.Length) return new DeskAnswer.Overtaken(caseId);

            var turn = WorkOut(log, message);
            switch (await SaveAsync(caseId, log.Length, message.TurnId, turn, cancel))
            {
                case AppendResult.Appended appended: return Answer(caseId, appended.Events, repeated: false);
                case AppendResult.DuplicateTurn duplicate: return Answer(caseId, duplicate.Events, repeated: true);
            }

            Signals.Ended(TurnEnd.Overtaken);
        }

        throw new InvalidOperationException($"case {caseId} changed {MostRaces} times while one turn was worked out");
    }

    private async Task<ImmutableArray<StoredEvent>> LogAsync(string caseId, CancellationToken cancel)
    {
        using var stage = Signals.Stage("read");
        return await store.ReadAsync(caseId, cancel);
    }

    private Turn WorkOut(ImmutableArray<StoredEvent> log, Message message)
    {
        using var stage = Signals.Stage("work-out");
        return current().Respond([.. log.Select(e => e.Event)], message);
    }

    private async Task<AppendResult> SaveAsync(
        string caseId, long after, string turnId, Turn turn, CancellationToken cancel)
    {
        using var stage = Signals.Stage("save");
        return await store.AppendAsync(caseId, after, turnId, turn.Events, cancel);
    }

    private static DeskAnswer.Answered Answer(string caseId, ImmutableArray<StoredEvent> turn, bool repeated)
    {
        Signals.Ended(repeated ? TurnEnd.Repeated : TurnEnd.Saved);
        return new(caseId, ReplyOf(turn), turn[0].Sequence - 1, turn[^1].Sequence, turn[^1].At, repeated);
    }

    private static Reply ReplyOf(ImmutableArray<StoredEvent> turn) =>
        turn.Select(e => e.Event).OfType<Replied>().Last().Reply;
}
