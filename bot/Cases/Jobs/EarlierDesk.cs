using System.Collections.Immutable;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.State;

namespace DxAssistant.Cases.Jobs;

/// <summary>
/// Tells the walk what was done on its unit before, when the unit becomes known or another visit begins.
/// </summary>
public sealed class EarlierDesk(ICaseStore store, CaseDesk walk, TimeProvider clock)
{
    /// <summary>
    /// Looks the unit up and takes a turn of the walk when there is something new. Done again, it changes nothing.
    /// </summary>
    /// <param name="turnId">The id under which the unit or the visit was written down.</param>
    /// <param name="visit">Whether another visit begins: then a closed case is opened again.</param>
    /// <param name="sight">How much of the cases of others is told.</param>
    /// <returns>
    /// The serial number by which something of another's case was told that was not known before; else null.
    /// </returns>
    public async Task<string?> TellAsync(
        string caseId, string turnId, string by, bool visit, EarlierSight sight, CancellationToken cancel = default)
    {
        var log = await store.ReadAsync(caseId, cancel);
        var state = Fold.Apply(CaseState.New, log.Select(stored => stored.Event));
        bool reopens = visit && state.ClosedHow is not null;
        if (state.ClosedHow is not null && !reopens) return null;
        string? serial = Job.Of(log).Unit?.Serial;
        var work = await WorkAsync(caseId, log, state, reopens, serial, sight, cancel);
        if (!reopens && work.Select(Key).SequenceEqual(state.Earlier.Select(Key))) return null;
        await walk.TakeAsync(caseId, new Message($"earlier.{turnId}", new MessageBody.Earlier(work, reopens), by),
            cancel: cancel);
        return work.Any(found => found.IsOfAnother && !state.Earlier.Contains(found)) ? serial : null;
    }

    private async Task<ImmutableArray<EarlierWork>> WorkAsync(
        string caseId, ImmutableArray<StoredEvent> log, CaseState state, bool reopens, string? serial,
        EarlierSight sight, CancellationToken cancel)
    {
        var today = DateOnly.FromDateTime(clock.GetUtcNow().UtcDateTime);
        var others = serial is null
            ? []
            : await new EarlierCases(store).FindAsync(serial, caseId, today, sight, cancel);
        var own = reopens
            ? EarlierCases.In(caseId, log, serial, today)
            : [.. state.Earlier.Where(work => work.Case == caseId)];
        return [.. own, .. others];
    }

    private static (string, string, DateOnly) Key(EarlierWork work) => (work.Case, work.Repair, work.Done);
}
