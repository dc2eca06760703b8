using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Threading.Channels;
using DxAssistant.Cases.Log;
using DxAssistant.Cases.WorkList;
using DxAssistant.Conversation.Events;
using DxAssistant.Knowledge.Serials;
using Microsoft.Data.Sqlite;

namespace DxAssistant.Cases.Sqlite;

/// <summary>Cases in one SQLite file: one writer, all waiting turns in one transaction, flushed before any is
/// acknowledged.</summary>
/// <remarks>WAL with synchronous FULL: what was acknowledged survives a kill of the program and a loss of
/// power.</remarks>
public sealed class SqliteCaseStore : ICaseStore
{
    // A flush costs the same for one turn as for many; the bound keeps one transaction short.
    private const int MostInOneTransaction = 256;

    private readonly ConcurrentBag<MarkReader> idle = [];
    private readonly Channel<AppendRequest> waiting = Channel.CreateBounded<AppendRequest>(4096);
    private readonly SqliteConnection connection;
    private readonly TurnWriter writer;
    private readonly TimeProvider clock;
    private readonly string readerSource;
    private readonly string markSource;
    private readonly string writerSource;
    private readonly Task writing;

    private SqliteCaseStore(SqliteConnection connection, string file, TimeProvider clock)
    {
        this.connection = connection;
        readerSource = Source(file, SqliteOpenMode.ReadOnly, pooling: true);
        markSource = Source(file, SqliteOpenMode.ReadOnly, pooling: false);
        writerSource = Source(file, SqliteOpenMode.ReadWrite, pooling: false);
        this.clock = clock;
        writer = new TurnWriter(connection);
        writing = Task.Run(WriteAllAsync);
    }

    /// <summary>Opens a file of cases; makes it, and its folder, when it is not there.</summary>
    /// <exception cref="CaseFileException">The file cannot be opened or is not a file of cases.</exception>
    public static SqliteCaseStore Open(string file, TimeProvider clock)
    {
        SqliteConnection? connection = null;
        try
        {
            PrivateFolder.Make(Path.GetDirectoryName(Path.GetFullPath(file))!);
            connection = new SqliteConnection(Source(file, SqliteOpenMode.ReadWriteCreate, pooling: false));
            connection.Open();
            CaseSchema.Run(connection, "PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL;");
            CaseSchema.Ensure(connection);
            WorkTables.Ensure(connection);
            return new SqliteCaseStore(connection, file, clock);
        }
        catch (Exception error) when (
            error is SqliteException or IOException or UnauthorizedAccessException or CaseFileException)
        {
            connection?.Dispose();
            throw error as CaseFileException ?? Unusable(file, error);
        }
    }

    public async Task<AppendResult> AppendAsync(
        string caseId, long expectedSequence, string turnId, ImmutableArray<CaseEvent> events,
        CancellationToken cancel = default)
    {
        AppendRequest.Check(caseId, expectedSequence, turnId, events);
        var request = new AppendRequest(caseId, expectedSequence, turnId, events, [.. events.Select(Veil.Draw)]);
        await waiting.Writer.WriteAsync(request, cancel);

        // Not given up on cancel: it may be written all the same, and the caller must hear so.
        return await request.Done.Task;
    }

    public Task<ImmutableArray<StoredEvent>> ReadAsync(string caseId, CancellationToken cancel = default) =>
        Task.FromResult(ReadRows(caseId).Open(caseId));

    public Task<KeptLog> ReadRowsAsync(string caseId, CancellationToken cancel = default) =>
        Task.FromResult(ReadRows(caseId));

    public Task<CaseMark> MarkAsync(string caseId, CancellationToken cancel = default) =>
        Task.FromResult(Mark(caseId));

    public Task<long> LastAsync(string caseId, CancellationToken cancel = default) =>
        Task.FromResult(Read(reader => LogReader.Last(reader, caseId)));

    public Task<ImmutableArray<string>> NamesAsync(CancellationToken cancel = default) =>
        Task.FromResult(Read(CaseList.Names));

    public Task<ImmutableArray<string>> WithSerialAsync(string serial, CancellationToken cancel = default) =>
        Task.FromResult(Read(reader => CaseList.WithSerial(reader, SerialPattern.Bare(serial))));

    public Task KeepPhotoAsync(string caseId, string hash, byte[] bytes, CancellationToken cancel = default) =>
        Task.FromResult(Change(wholeCase => wholeCase.KeepPhoto(caseId, hash, bytes)));

    public Task<byte[]?> PhotoAsync(string caseId, string hash, CancellationToken cancel = default) =>
        Task.FromResult(Read(reader => PhotoTable.Read(reader, caseId, hash)));

    public Task DropPhotoAsync(string caseId, string hash, CancellationToken cancel = default) =>
        Task.FromResult(Change(wholeCase => wholeCase.DropPhotos(caseId, hash)));

    public Task<bool> TakeOverAsync(string caseId, ImmutableArray<LogRow> rows, CancellationToken cancel = default) =>
        Task.FromResult(Change(wholeCase => wholeCase.TakeOver(caseId, rows)));

    public Task<int> BlankAsync(string caseId, CancellationToken cancel = default) =>
        Task.FromResult(Change(wholeCase => wholeCase.Blank(caseId)));

    public Task<ImmutableArray<string>> LeftAloneAsync(DateTimeOffset before, int limit,
        CancellationToken cancel = default)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(limit, 1);
        return Task.FromResult(Read(reader => BlankedTable.Read(reader, before, limit)));
    }

    public Task<CasePage> PageAsync(CaseQuery query, CancellationToken cancel = default)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(query.Limit, 1);
        return Task.FromResult(Read(reader => CaseList.Read(reader, query)));
    }

    public Task<WorkPage> SearchAsync(WorkQuery query, CancellationToken cancel = default)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(query.Limit, 1);
        return Task.FromResult(Read(reader => WorkSearch.Read(reader, query)));
    }

    public async ValueTask DisposeAsync()
    {
        if (!waiting.Writer.TryComplete()) return;
        await writing;
        writer.Dispose();
        foreach (var reader in idle) reader.Dispose();

        // The writer last: only it may carry the journal over, so that one file is left that holds everything.
        using (var pooled = new SqliteConnection(readerSource)) SqliteConnection.ClearPool(pooled);
        await connection.DisposeAsync();
    }

    private static string Source(string file, SqliteOpenMode mode, bool pooling) =>
        new SqliteConnectionStringBuilder
        {
            DataSource = file,
            Mode = mode,
            Pooling = pooling,
            DefaultTimeout = 10,
        }.ToString();

    private KeptLog ReadRows(string caseId) => Read(reader => LogReader.Read(reader, caseId), $"case {caseId}");

    private T Read<T>(Func<SqliteConnection, T> read, string what = "the file of cases")
    {
        try
        {
            using var reader = new SqliteConnection(readerSource);
            reader.Open();
            return read(reader);
        }
        catch (SqliteException error)
        {
            throw Unreadable(error, what);
        }
    }

    // One that failed is not used again.
    private CaseMark Mark(string caseId)
    {
        MarkReader? reader = null;
        try
        {
            if (!idle.TryTake(out reader)) reader = new MarkReader(markSource);
            var mark = reader.Read(caseId);
            idle.Add(reader);
            return mark;
        }
        catch (SqliteException error)
        {
            reader?.Dispose();
            throw Unreadable(error, $"case {caseId}");
        }
    }

    private static CaseFileException Unusable(string file, Exception error) => error is SqliteException fault
        ? SqliteTrouble.Of($"{file} cannot be used for cases (--data names another)", fault)
        : new CaseFileException($"{file} cannot be used for cases ({error.Message}): name another file with --data",
            error);

    private static CaseFileException Unreadable(SqliteException error, string what) =>
        SqliteTrouble.Of($"{what} cannot be read", error);

    private T Change<T>(Func<WholeCase, T> change)
    {
        try
        {
            using var own = new SqliteConnection(writerSource);
            own.Open();
            return WholeCase.Change(own, change);
        }
        catch (SqliteException error)
        {
            throw SqliteTrouble.Of("the file of cases cannot be changed", error);
        }
    }

    private async Task WriteAllAsync()
    {
        var batch = new List<AppendRequest>();
        while (await waiting.Reader.WaitToReadAsync())
        {
            while (batch.Count < MostInOneTransaction && waiting.Reader.TryRead(out var request)) batch.Add(request);
            WriteTogether(batch);
            batch.Clear();
        }
    }

    private void WriteTogether(List<AppendRequest> batch)
    {
        try
        {
            CaseSchema.Run(connection, "BEGIN IMMEDIATE");
            var at = StoreClock.Now(clock);
            var ends = batch.ConvertAll(request => Write(request, at));
            CaseSchema.Run(connection, "COMMIT");
            foreach (var end in ends) end();
        }
        catch (Exception error)
        {
            RollBack();
            const string Unsaved = "the turn could not be saved";
            var refusal = error is SqliteException fault
                ? SqliteTrouble.Of(Unsaved, fault)
                : new CaseFileException($"{Unsaved}: {error.Message}", error);
            foreach (var request in batch) request.Done.TrySetException(refusal);
        }
    }

    // What to tell the sender once the others' turns are on disk. An entry of its own case that cannot be read is no
    // fault of the others', and it is met before anything of this turn is written.
    private Action Write(AppendRequest request, DateTimeOffset at)
    {
        try
        {
            var result = writer.Write(request, at);
            return () => request.Done.SetResult(result);
        }
        catch (CaseFileException error)
        {
            return () => request.Done.SetException(error);
        }
    }

    // SQLite has rolled back by itself after some errors; then there is nothing left to end.
    private void RollBack()
    {
        try
        {
            CaseSchema.Run(connection, "ROLLBACK");
        }
        catch (SqliteException)
        {
        }
    }
}
