using System.Collections.Immutable;
using DxAssistant.Conversation.Events;

namespace DxAssistant.Cases;

/// <summary>Cases that last as long as the program, for a walk that is not to be kept.</summary>
public sealed class MemoryCaseStore(TimeProvider clock) : ICaseStore
{
    private readonly Lock gate = new();
    private readonly Dictionary<string, Kept> cases = new(StringComparer.Ordinal);
    private long appends;

    private sealed record Kept(ImmutableArray<StoredEvent> Log, string? Title, long Order);

    public Task<AppendResult> AppendAsync(
        string caseId, long expectedSequence, string turnId, ImmutableArray<CaseEvent> events,
        CancellationToken cancel = default)
    {
        AppendRequest.Check(caseId, expectedSequence, turnId, events);
        lock (gate) return Task.FromResult(Append(caseId, expectedSequence, turnId, events));
    }

    public Task<ImmutableArray<StoredEvent>> ReadAsync(string caseId, CancellationToken cancel = default)
    {
        lock (gate) return Task.FromResult(Find(caseId).Log);
    }

    public Task<ImmutableArray<CaseLine>> ListAsync(int limit, CancellationToken cancel = default)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(limit, 1);
        lock (gate)
        {
            return Task.FromResult(
                cases.Where(c => c.Value.Title is not null).OrderByDescending(c => c.Value.Order).Take(limit)
                .Select(c => new CaseLine(c.Key, c.Value.Title!, c.Value.Log[0].At, c.Value.Log[^1].At))
                .ToImmutableArray());
        }
    }

    public ValueTask DisposeAsync() => ValueTask.CompletedTask;

    private AppendResult Append(string caseId, long expected, string turnId, ImmutableArray<CaseEvent> events)
    {
        var kept = Find(caseId);
        var earlier = kept.Log.Where(e => e.TurnId == turnId).ToImmutableArray();
        if (!earlier.IsEmpty) return new AppendResult.DuplicateTurn(earlier);
        if (kept.Log.Length != expected) return new AppendResult.Conflict(kept.Log.Length);

        var at = StoreClock.Now(clock);
        var added = events.Select((e, i) => new StoredEvent(expected + 1 + i, turnId, at, e)).ToImmutableArray();
        cases[caseId] = new Kept(kept.Log.AddRange(added), kept.Title ?? CaseTitle.Of(events), ++appends);
        return new AppendResult.Appended(added);
    }

    private Kept Find(string caseId) => cases.GetValueOrDefault(caseId) ?? new Kept([], null, 0);
}
