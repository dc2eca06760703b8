using System.Collections.Immutable;
using DxAssistant.Conversation;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.State;

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

    // Some kilobytes each; as many as are talked at within minutes on a busy day.
    private const int MostInMind = 2_000;

    private readonly StateMemory memory = new(MostInMind);

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
    public Task<DeskAnswer> TakeAsync(string caseId, Message message, long? only = null,
        CancellationToken cancel = default) =>
        message.TurnId == OpeningTurn
            ? throw new ArgumentException($"a message may not have the turn id {OpeningTurn}", nameof(message))
            : TurnAsync(caseId, message, mayOpen: false, only, cancel);

    /// <summary>All events of a case; empty when there is no such case.</summary>
    public Task<ImmutableArray<StoredEvent>> ReadAsync(string caseId, CancellationToken cancel = default) =>
        store.ReadAsync(caseId, cancel);

    private async Task<DeskAnswer> TurnAsync(string caseId, Message message, bool mayOpen, long? only,
        CancellationToken cancel)
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

    private async Task<DeskAnswer> RaceAsync(string caseId, Message message, bool mayOpen, long? only,
        CancellationToken cancel)
    {
        for (int race = 0; race < MostRaces; race++)
        {
            var core = current();
            var place = race == 0 && only is null ? await RememberAsync(core, caseId, cancel) : null;
            place ??= await ReadPlaceAsync(core, caseId, cancel);
            if (place.Mark.Last == 0 && !mayOpen) return new DeskAnswer.UnknownCase(caseId);
            var earlier = place.Log.Where(e => e.TurnId == message.TurnId).ToImmutableArray();
            if (!earlier.IsEmpty) return Answer(caseId, earlier, repeated: true);
            if (only is { } meant && meant != place.Mark.Last) return new DeskAnswer.Overtaken(caseId);

            var turn = WorkOut(core, place, message);
            switch (await SaveAsync(caseId, place.Mark.Last, message.TurnId, turn, cancel))
            {
                case AppendResult.Appended appended: return Answer(caseId, appended.Events, repeated: false)
                    with { Done = Remember(caseId, place, turn, appended.Events) };
                case AppendResult.DuplicateTurn duplicate: return Answer(caseId, duplicate.Events, repeated: true);
            }

            Signals.Ended(TurnEnd.Overtaken);
        }

        throw new InvalidOperationException($"case {caseId} changed {MostRaces} times while one turn was worked out");
    }

    // A case in mind is not read. A retry is then noticed by the store.
    private async Task<Known?> RememberAsync(IResponder core, string caseId, CancellationToken cancel)
    {
        if (core is not IStandingResponder) return null;
        using var stage = Signals.Stage("read");
        var mark = await store.MarkAsync(caseId, cancel);
        return memory.TryFind(caseId, mark, out var state) ? new Known(mark, [], state) : null;
    }

    // The mark before the log: a case that changes in between is then only not kept in mind.
    private async Task<Known> ReadPlaceAsync(IResponder core, string caseId, CancellationToken cancel)
    {
        using var stage = Signals.Stage("read");
        var mark = await store.MarkAsync(caseId, cancel);
        var log = await store.ReadAsync(caseId, cancel);
        var read = mark with { Last = log.Length, Hash = log.IsEmpty ? "" : log[^1].Hash };
        return new Known(read, log, core is IStandingResponder
            ? Fold.Apply(CaseState.New, log.Select(e => e.Event))
            : null);
    }

    private static Turn WorkOut(IResponder core, Known place, Message message)
    {
        using var stage = Signals.Stage("work-out");
        return place.State is { } state && core is IStandingResponder standing
            ? standing.Respond(state, message)
            : core.Respond([.. place.Log.Select(e => e.Event)], message);
    }

    private TurnDone? Remember(string caseId, Known before, Turn turn, ImmutableArray<StoredEvent> stored)
    {
        if (before.State is not { } state) return null;
        var after = turn.After ?? Fold.Apply(state, turn.Events);
        memory.Keep(caseId, before.Mark with { Last = stored[^1].Sequence, Hash = stored[^1].Hash }, after);
        return new TurnDone(state.LastReply?.Question, stored, after);
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

    /// <param name="Log">Empty when the case was in mind.</param>
    /// <param name="State">Null for a core that wants the log.</param>
    private sealed record Known(CaseMark Mark, ImmutableArray<StoredEvent> Log, CaseState? State);
}
