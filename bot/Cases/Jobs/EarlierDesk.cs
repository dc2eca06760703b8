using System.Collections.Immutable;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.State;

namespace DxAssistant.Cases.Jobs;

/// <summary>Tells the walk what was done on its unit before, when the unit becomes known or another visit begins.</summary>
public sealed class EarlierDesk(ICaseStore store, CaseDesk walk, TimeProvider clock)
{
    /// <summary>Looks the unit up and takes a turn of the walk when there is something new. Done again, it changes nothing.</summary>
    /// <param name="turnId">The id under which the unit or the visit was written down.</param>
    /// <param name="visit">Whether another visit begins: then a closed case is opened again.</param>
    public async Task TellAsync(string caseId, string turnId, string by, bool visit, CancellationToken cancel = default)
    {
        var log = await store.ReadAsync(caseId, cancel);
        var state = Fold.Apply(CaseState.New, log.Select(stored => stored.Event));
        bool reopens = visit && state.ClosedHow is not null;
        if (state.ClosedHow is not null && !reopens) return;
        var work = await WorkAsync(caseId, log, state, reopens, cancel);
        if (!reopens && work.Select(Key).SequenceEqual(state.Earlier.Select(Key))) return;
        await walk.TakeAsync(caseId, new Message($"earlier.{turnId}", new MessageBody.Earlier(work, reopens), by), cancel);
    }

    private async Task<ImmutableArray<EarlierWork>> WorkAsync(
        string caseId, ImmutableArray<StoredEvent> log, CaseState state, bool reopens, CancellationToken cancel)
    {
        var today = DateOnly.FromDateTime(clock.GetUtcNow().UtcDateTime);
        string? serial = Job.Of(log).Unit?.Serial;
        var others = serial is null ? [] : await new EarlierCases(store).FindAsync(serial, caseId, today, cancel);
        var own = reopens ? EarlierCases.In(caseId, log, serial, today) : [.. state.Earlier.Where(work => work.Case == caseId)];
        return [.. own, .. others];
    }

    private static (string, string, DateOnly) Key(EarlierWork work) => (work.Case, work.Repair, work.Done);
}
