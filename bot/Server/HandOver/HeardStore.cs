using System.Collections.Immutable;
using DxAssistant.Cases;
using DxAssistant.Cases.Log;
using DxAssistant.Cases.WorkList;
using DxAssistant.Conversation.Events;

namespace DxAssistant.Server.HandOver;

/// <summary>A store of cases whose changes are heard.</summary>
internal sealed class HeardStore(ICaseStore store, CaseBell bell) : ICaseStore
{
    public async Task<AppendResult> AppendAsync(
        string caseId, long expectedSequence, string turnId, ImmutableArray<CaseEvent> events,
        CancellationToken cancel = default)
    {
        var done = await store.AppendAsync(caseId, expectedSequence, turnId, events, cancel);
        if (done is not AppendResult.Appended) return done;
        bell.Ring(caseId);
        store.News?.Tell(caseId);
        return done;
    }

    public ICaseNews? News => store.News;

    public Task<ImmutableArray<StoredEvent>> ReadAsync(string caseId, CancellationToken cancel = default) =>
        store.ReadAsync(caseId, cancel);

    public Task<CasePage> PageAsync(CaseQuery query, CancellationToken cancel = default) =>
        store.PageAsync(query, cancel);

    public Task<KeptLog> ReadRowsAsync(string caseId, CancellationToken cancel = default) =>
        store.ReadRowsAsync(caseId, cancel);

    public Task<CaseMark> MarkAsync(string caseId, CancellationToken cancel = default) =>
        store.MarkAsync(caseId, cancel);

    public Task<long> LastAsync(string caseId, CancellationToken cancel = default) => store.LastAsync(caseId, cancel);

    public Task<ImmutableArray<string>> NamesAsync(CancellationToken cancel = default) => store.NamesAsync(cancel);

    public Task<bool> TakeOverAsync(string caseId, ImmutableArray<LogRow> rows, CancellationToken cancel = default) =>
        store.TakeOverAsync(caseId, rows, cancel);

    public Task<ImmutableArray<string>> WithSerialAsync(string serial, CancellationToken cancel = default) =>
        store.WithSerialAsync(serial, cancel);

    public Task KeepPhotoAsync(string caseId, string hash, byte[] bytes, CancellationToken cancel = default) =>
        store.KeepPhotoAsync(caseId, hash, bytes, cancel);

    public Task<byte[]?> PhotoAsync(string caseId, string hash, CancellationToken cancel = default) =>
        store.PhotoAsync(caseId, hash, cancel);

    public Task DropPhotoAsync(string caseId, string hash, CancellationToken cancel = default) =>
        store.DropPhotoAsync(caseId, hash, cancel);

    public Task<WorkPage> SearchAsync(WorkQuery query, CancellationToken cancel = default) =>
        store.SearchAsync(query, cancel);

    public Task<ImmutableArray<string>> LeftAloneAsync(DateTimeOffset before, int limit,
        CancellationToken cancel = default) =>
        store.LeftAloneAsync(before, limit, cancel);

    public Task<int> BlankAsync(string caseId, CancellationToken cancel = default) => store.BlankAsync(caseId, cancel);

    public ValueTask DisposeAsync() => store.DisposeAsync();
}
