using System.Collections.Immutable;
using DxAssistant.Cases.Log;
using DxAssistant.Cases.WorkList;
using DxAssistant.Conversation.Events;
using DxAssistant.Knowledge.Serials;

namespace DxAssistant.Cases;

/// <summary>Cases that last as long as the program, for a walk that is not to be kept.</summary>
public sealed class MemoryCaseStore(TimeProvider clock) : ICaseStore
{
    private readonly Dictionary<string, long> blankedAt = new(StringComparer.Ordinal);
    private readonly Lock gate = new();
    private readonly Dictionary<string, Kept> cases = new(StringComparer.Ordinal);
    private readonly Dictionary<(string Case, string Hash), byte[]> photos = [];
    private readonly MemoryWorkList work = new();
    private long appends;

    private sealed record Kept(ImmutableArray<LogRow> Rows, string? Title, long Order)
    {
        public static Kept None { get; } = new([], null, 0);

        public string LastHash => Rows.IsEmpty ? Chain.Beginning : Rows[^1].Hash;
    }

    public Task<AppendResult> AppendAsync(
        string caseId, long expectedSequence, string turnId, ImmutableArray<CaseEvent> events,
        CancellationToken cancel = default)
    {
        AppendRequest.Check(caseId, expectedSequence, turnId, events);
        lock (gate) return Task.FromResult(Append(caseId, expectedSequence, turnId, events));
    }

    public async Task<ImmutableArray<StoredEvent>> ReadAsync(string caseId, CancellationToken cancel = default) =>
        (await ReadRowsAsync(caseId, cancel)).Open(caseId);

    public Task<KeptLog> ReadRowsAsync(string caseId, CancellationToken cancel = default)
    {
        lock (gate)
        {
            var rows = Find(caseId).Rows;
            return Task.FromResult(new KeptLog(rows, rows.Length));
        }
    }

    public Task<ImmutableArray<string>> LeftAloneAsync(DateTimeOffset before, int limit,
        CancellationToken cancel = default)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(limit, 1);
        lock (gate)
        {
            return Task.FromResult(cases
                .Where(c => c.Value.Rows[^1].At < before && blankedAt.GetValueOrDefault(c.Key) < c.Value.Order)
                .OrderBy(c => c.Value.Rows[^1].At).ThenBy(c => c.Key, StringComparer.Ordinal)
                .Take(limit).Select(c => c.Key).ToImmutableArray());
        }
    }

    public Task<CasePage> PageAsync(CaseQuery query, CancellationToken cancel = default)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(query.Limit, 1);
        lock (gate)
        {
            var read = cases.Where(c => c.Value.Title is not null && c.Value.Order < (query.Before ?? long.MaxValue))
                .Where(c => query.Among?.Contains(c.Key) != false).OrderByDescending(c => c.Value.Order)
                .Take(query.Limit == int.MaxValue ? query.Limit : query.Limit + 1)
                .Select(
                    c => (new CaseLine(c.Key, c.Value.Title!, c.Value.Rows[0].At, c.Value.Rows[^1].At), c.Value.Order));
            return Task.FromResult(CasePage.Of([.. read], query.Limit));
        }
    }

    public Task<WorkPage> SearchAsync(WorkQuery query, CancellationToken cancel = default)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(query.Limit, 1);
        lock (gate) return Task.FromResult(work.Search(query));
    }

    public Task<CaseMark> MarkAsync(string caseId, CancellationToken cancel = default)
    {
        lock (gate)
        {
            var rows = Find(caseId).Rows;
            return Task.FromResult(rows.IsEmpty
                ? CaseMark.None
                : new CaseMark(rows.Length, rows[^1].Hash, blankedAt.GetValueOrDefault(caseId)));
        }
    }

    public Task<long> LastAsync(string caseId, CancellationToken cancel = default)
    {
        lock (gate) return Task.FromResult((long)Find(caseId).Rows.Length);
    }

    public Task<ImmutableArray<string>> NamesAsync(CancellationToken cancel = default)
    {
        lock (gate) return Task.FromResult(cases.Keys.Order(StringComparer.Ordinal).ToImmutableArray());
    }

    public Task<bool> TakeOverAsync(string caseId, ImmutableArray<LogRow> rows, CancellationToken cancel = default)
    {
        var log = new KeptLog(rows, rows.Length).Open(caseId);
        lock (gate)
        {
            bool added = cases.TryAdd(caseId, new Kept(rows, CaseTitle.OfAll(log), ++appends));
            if (added) work.Replace(caseId, log);
            return Task.FromResult(added);
        }
    }

    public Task<ImmutableArray<string>> WithSerialAsync(string serial, CancellationToken cancel = default)
    {
        string bare = SerialPattern.Bare(serial);
        lock (gate)
        {
            return Task.FromResult(
                cases.Where(c => Serials.In(Chain.Open(c.Key, c.Value.Rows).Select(e => e.Event)).Contains(bare))
                .Select(c => c.Key).Order(StringComparer.Ordinal).ToImmutableArray());
        }
    }

    public Task KeepPhotoAsync(string caseId, string hash, byte[] bytes, CancellationToken cancel = default)
    {
        lock (gate) photos.TryAdd((caseId, hash), bytes);
        return Task.CompletedTask;
    }

    public Task<byte[]?> PhotoAsync(string caseId, string hash, CancellationToken cancel = default)
    {
        lock (gate) return Task.FromResult(photos.GetValueOrDefault((caseId, hash)));
    }

    public Task DropPhotoAsync(string caseId, string hash, CancellationToken cancel = default)
    {
        lock (gate) photos.Remove((caseId, hash));
        return Task.CompletedTask;
    }

    public Task<int> BlankAsync(string caseId, CancellationToken cancel = default)
    {
        lock (gate)
        {
            var kept = Find(caseId);
            if (kept.Rows.IsEmpty) return Task.FromResult(0);
            foreach (var photo in photos.Keys.Where(photo => photo.Case == caseId).ToList()) photos.Remove(photo);
            int blanked = kept.Rows.Count(row => row.Aside is not null);
            string? title = kept.Title is null ? null : Veil.Removed;
            blankedAt[caseId] = kept.Order;
            cases[caseId] = kept with { Rows = [.. kept.Rows.Select(Veil.Blank)], Title = title };
            work.Replace(caseId, Chain.Open(caseId, cases[caseId].Rows), title);
            return Task.FromResult(blanked);
        }
    }

    public ValueTask DisposeAsync() => ValueTask.CompletedTask;

    private AppendResult Append(string caseId, long expected, string turnId, ImmutableArray<CaseEvent> events)
    {
        var kept = Find(caseId);
        var log = Chain.Open(caseId, kept.Rows);
        var earlier = log.Where(e => e.TurnId == turnId).ToImmutableArray();
        if (!earlier.IsEmpty) return new AppendResult.DuplicateTurn(earlier);
        if (log.Length != expected) return new AppendResult.Conflict(log.Length);

        var at = StoreClock.Now(clock);
        var added = Chain.Seal(caseId, expected, kept.LastHash, turnId, at, [.. events.Select(Veil.Draw)]);
        cases[caseId] = new Kept(kept.Rows.AddRange(added), kept.Title ?? CaseTitle.Of(events), ++appends);
        work.Add(caseId, at, events);
        return new AppendResult.Appended(StoredEvent.Of(added, events));
    }

    private Kept Find(string caseId) => cases.GetValueOrDefault(caseId) ?? Kept.None;
}
