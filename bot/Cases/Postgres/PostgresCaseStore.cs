using System.Collections.Immutable;
using DxAssistant.Cases.Log;
using DxAssistant.Cases.WorkList;
using DxAssistant.Conversation.Events;
using DxAssistant.Knowledge.Serials;
using Npgsql;

namespace DxAssistant.Cases.Postgres;

/// <summary>Cases in a PostgreSQL database, which several servers may share.</summary>
/// <remarks>A turn is worked out from the end of the log and put there with ON CONFLICT DO NOTHING: when no row came
/// in, another turn was first.</remarks>
public sealed class PostgresCaseStore : ICaseStore
{
    // Each attempt fails only because another turn of the same case was stored meanwhile.
    private const int MostAttempts = 100;

    private readonly NpgsqlDataSource source;
    private readonly TimeProvider clock;
    private readonly PostgresNews news;

    private PostgresCaseStore(NpgsqlDataSource source, TimeProvider clock) =>
        (this.source, this.clock, news) = (source, clock, new PostgresNews(source));

    public ICaseNews News => news;

    /// <summary>Opens a database of cases; makes the tables when they are not there.</summary>
    /// <param name="connection">In the form <c>Host=…;Username=…;Database=…</c>.</param>
    /// <exception cref="CaseFileException">The database cannot be used.</exception>
    public static async Task<PostgresCaseStore> OpenAsync(
        string connection, TimeProvider clock, CancellationToken cancel = default)
    {
        NpgsqlDataSource? source = null;
        try
        {
            source = NpgsqlDataSource.Create(PostgresPlace.Bounded(connection));
            await PostgresSchema.EnsureAsync(source, cancel);
            return new PostgresCaseStore(source, clock);
        }
        catch (Exception error) when (error is ArgumentException or CaseFileException || StoreTrouble.Is(error, cancel))
        {
            if (source is not null) await source.DisposeAsync();
            throw error as CaseFileException ?? new CaseFileException(
                $"the database cannot be used for cases ({error.Message}): give --store as \"Host=…;Username=…;Database=…\", the password in PGPASSWORD",
                error);
        }
    }

    /// <inheritdoc/>
    public async Task<AppendResult> AppendAsync(
        string caseId, long expectedSequence, string turnId, ImmutableArray<CaseEvent> events,
        CancellationToken cancel = default)
    {
        AppendRequest.Check(caseId, expectedSequence, turnId, events);
        var request = new AppendRequest(caseId, expectedSequence, turnId, events, [.. events.Select(Veil.Draw)]);
        for (int attempt = 0; attempt < MostAttempts; attempt++)
        {
            var end = await UseAsync(
                "the turn could not be saved", (log, transaction) => TryAsync(request, log, transaction, cancel),
                cancel);
            if (end is not null) return end;
        }

        throw new CaseFileException($"case {caseId} changed {MostAttempts} times while one turn was saved");
    }

    public async Task<ImmutableArray<StoredEvent>> ReadAsync(string caseId, CancellationToken cancel = default) =>
        (await ReadRowsAsync(caseId, cancel)).Open(caseId);

    public Task<KeptLog> ReadRowsAsync(string caseId, CancellationToken cancel = default) =>
        UseAsync("the cases cannot be read", (log, _) => log.ReadAsync(caseId), cancel);

    public Task<ImmutableArray<string>> LeftAloneAsync(DateTimeOffset before, int limit,
        CancellationToken cancel = default)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(limit, 1);
        const string LeftAlone = """
            SELECT id FROM job LEFT JOIN blanked ON blanked.case_id = id
            WHERE last_at < $1 AND coalesce(blanked.last_event, 0) < job.last_event ORDER BY last_at, id COLLATE "C" LIMIT $2
            """;
        return ReadEachAsync(LeftAlone, row => row.GetString(0), [before.ToUnixTimeMilliseconds(), (long)limit],
            cancel);
    }

    public async Task<CasePage> PageAsync(CaseQuery query, CancellationToken cancel = default)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(query.Limit, 1);
        const string Page =
            "SELECT id, title, opened_at, last_at, last_event FROM job WHERE title IS NOT NULL AND last_event < $1 AND "
                + "($2::text[] IS NULL OR id = ANY ($2::text[])) ORDER BY last_event DESC LIMIT $3";
        var read = await ReadEachAsync(
            Page,
            row => (new CaseLine(row.GetString(0), row.GetString(1), Time(row, 2), Time(row, 3)), row.GetInt64(4)),
            [query.Before ?? long.MaxValue, query.Among?.ToArray(), query.Limit + 1L], cancel);
        return CasePage.Of(read, query.Limit);
    }

    public async Task<CaseMark> MarkAsync(string caseId, CancellationToken cancel = default)
    {
        const string Mark = """
            SELECT sequence, hash, coalesce((SELECT last_event FROM blanked WHERE case_id = $1), 0)
            FROM event WHERE case_id = $1 ORDER BY sequence DESC LIMIT 1
            """;
        var found = await ReadEachAsync(Mark, row => new CaseMark(row.GetInt64(0), row.GetString(1), row.GetInt64(2)),
            [caseId], cancel);
        return found.IsEmpty ? CaseMark.None : found[0];
    }

    public Task<long> LastAsync(string caseId, CancellationToken cancel = default) =>
        UseAsync("the cases cannot be read", (log, _) => log.LastAsync(caseId), cancel);

    public Task<ImmutableArray<string>> NamesAsync(CancellationToken cancel = default) =>
        UseAsync("the cases cannot be read", (log, _) => log.NamesAsync(), cancel);

    public async Task<WorkPage> SearchAsync(WorkQuery query, CancellationToken cancel = default)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(query.Limit, 1);
        ImmutableArray<(WorkLine, long)> read = [];
        foreach (var part in WorkPart.Of(query.Order, query.After))
        {
            if (read.Length > query.Limit) break;
            var (sql, values) = PostgresWork.Search(query, part, query.Limit + 1L - read.Length);
            read = read.AddRange(await ReadEachAsync(sql, Line, values, cancel));
        }

        return WorkPage.Of(read, query);
    }

    public Task<ImmutableArray<string>> WithSerialAsync(string serial, CancellationToken cancel = default) =>
        ReadEachAsync(
            "SELECT case_id FROM unit_serial WHERE serial = $1 ORDER BY case_id", row => row.GetString(0),
            [SerialPattern.Bare(serial)], cancel);

    public Task KeepPhotoAsync(string caseId, string hash, byte[] bytes, CancellationToken cancel = default) =>
        RunAsync(
            "the photo could not be saved", "INSERT INTO photo VALUES ($1, $2, $3) ON CONFLICT DO NOTHING",
            [caseId, hash, bytes], cancel);

    public async Task<byte[]?> PhotoAsync(string caseId, string hash, CancellationToken cancel = default) =>
        (await ReadEachAsync("SELECT bytes FROM photo WHERE case_id = $1 AND hash = $2", row => (byte[])row[0],
            [caseId, hash], cancel))
            .FirstOrDefault();

    public Task DropPhotoAsync(string caseId, string hash, CancellationToken cancel = default) => RunAsync(
        "the photo could not be removed", "DELETE FROM photo WHERE case_id = $1 AND hash = $2", [caseId, hash], cancel);

    public Task<bool> TakeOverAsync(string caseId, ImmutableArray<LogRow> rows, CancellationToken cancel = default)
    {
        var whole = new KeptLog(rows, rows.Length);
        var events = whole.Open(caseId);
        string? title = CaseTitle.OfAll(events);
        return UseAsync("the case could not be saved", async (log, transaction) =>
        {
            foreach (var turn in whole.Turns())
                if (!await log.AddAsync(caseId, turn, title)) return false;
            await log.AddSerialsAsync(caseId, events.Select(stored => stored.Event));
            await PostgresWork.FillAsync(log, caseId, events);
            await transaction.CommitAsync(CancellationToken.None);
            return true;
        }, cancel);
    }

    public Task<int> BlankAsync(string caseId, CancellationToken cancel = default) =>
        UseAsync("the words could not be removed", async (log, transaction) =>
        {
            var spoken = (await log.ReadAsync(caseId)).Rows.Where(row => row.Aside is not null).ToImmutableArray();
            foreach (var row in spoken)
            {
                await log.RunAsync("UPDATE event SET aside = $1 WHERE case_id = $2 AND sequence = $3",
                    Veil.Blank(row).Aside, caseId, row.Sequence);
            }

            await log.RunAsync("UPDATE job SET title = $1 WHERE id = $2 AND title IS NOT NULL", Veil.Removed, caseId);
            await log.RunAsync("DELETE FROM photo WHERE case_id = $1", caseId);
            await log.RunAsync(
                "INSERT INTO blanked SELECT id, last_event FROM job WHERE id = $1 ON CONFLICT (case_id) DO UPDATE SET "
                    + "last_event = excluded.last_event", caseId);
            await PostgresWork.FillAsync(log, caseId, (await log.ReadAsync(caseId)).Open(caseId));
            await transaction.CommitAsync(CancellationToken.None);
            return spoken.Length;
        }, cancel);

    public async ValueTask DisposeAsync()
    {
        await news.DisposeAsync();
        await source.DisposeAsync();
    }

    private async Task<AppendResult?> TryAsync(
        AppendRequest request, PostgresLog log, NpgsqlTransaction transaction, CancellationToken cancel)
    {
        string caseId = request.CaseId;
        if (await log.FindTurnAsync(caseId, request.TurnId) is { } place)
            return new AppendResult.DuplicateTurn(
                (await log.ReadAsync(caseId)).Open(caseId)[(place.First - 1)..place.Last]);
        var (last, hash) = await log.LastEntryAsync(caseId);
        if (last != request.ExpectedSequence) return new AppendResult.Conflict(last);

        var rows = Chain.Seal(caseId, last, hash, request.TurnId, StoreClock.Now(clock), request.Entries);
        if (!await log.AddAsync(caseId, rows, CaseTitle.Of(request.Events))) return null;
        await log.AddSerialsAsync(caseId, request.Events);
        await PostgresWork.AddAsync(log, caseId, rows[0].Sequence, request.Events);

        // Not given up on cancel from here on: it may be written all the same, and the caller must hear so.
        cancel.ThrowIfCancellationRequested();
        await transaction.CommitAsync(CancellationToken.None);
        return new AppendResult.Appended(StoredEvent.Of(rows, request.Events));
    }

    private Task<int> RunAsync(string failed, string sql, object?[] values, CancellationToken cancel) =>
        UseAsync(failed, async (log, transaction) =>
        {
            int changed = await log.RunAsync(sql, values);
            await transaction.CommitAsync(CancellationToken.None);
            return changed;
        }, cancel);

    private Task<ImmutableArray<T>> ReadEachAsync<T>(
        string sql, Func<NpgsqlDataReader, T> read, object?[] values, CancellationToken cancel) =>
        UseAsync("the cases cannot be read", async (log, _) =>
        {
            await using var command = log.Command(sql, values);
            await using var rows = await command.ExecuteReaderAsync(cancel);
            var found = ImmutableArray.CreateBuilder<T>();
            while (await rows.ReadAsync(cancel)) found.Add(read(rows));
            return found.ToImmutable();
        }, cancel);

    private static (WorkLine, long) Line(NpgsqlDataReader row) => (new WorkLine(
        row.GetString(0), Text(row, 1) ?? "", Text(row, 2), Text(row, 3), Text(row, 4), Time(row, 5), Time(row, 6)),
        row.GetInt64(7));

    private static string? Text(NpgsqlDataReader row, int column) =>
        row.IsDBNull(column) ? null : row.GetString(column);

    private static DateTimeOffset Time(NpgsqlDataReader row, int column) =>
        DateTimeOffset.FromUnixTimeMilliseconds(row.GetInt64(column));

    private async Task<T> UseAsync<T>(
        string failed, Func<PostgresLog, NpgsqlTransaction, Task<T>> use, CancellationToken cancel)
    {
        try
        {
            await using var connection = await source.OpenConnectionAsync(cancel);
            return await UseAsync(connection, use, cancel);
        }
        catch (Exception error) when (StoreTrouble.Is(error, cancel))
        {
            throw new CaseFileException($"{failed} ({error.Message}): {StoreTrouble.Remedy}", error);
        }
    }

    // A transaction that is not committed is rolled back when it is disposed.
    private static async Task<T> UseAsync<T>(
        NpgsqlConnection connection, Func<PostgresLog, NpgsqlTransaction, Task<T>> use, CancellationToken cancel)
    {
        try
        {
            await using var transaction = await connection.BeginTransactionAsync(cancel);
            return await use(new PostgresLog(connection, cancel), transaction);
        }
        catch (InvalidOperationException error) when (StoreTrouble.Is(error, connection, cancel))
        {
            throw new NpgsqlException("the connection was cut off", error);
        }
    }
}
