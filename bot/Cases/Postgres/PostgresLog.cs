using System.Collections.Immutable;
using DxAssistant.Cases.Log;
using DxAssistant.Conversation.Events;
using Npgsql;

namespace DxAssistant.Cases.Postgres;

/// <summary>Rows of logs, read from and written to one connection.</summary>
internal sealed class PostgresLog(NpgsqlConnection connection, CancellationToken cancel)
{
    private const string ReadRows =
        "SELECT sequence, turn_id, at, body, aside, hash FROM event WHERE case_id = $1 ORDER BY sequence";

    // What goes through the whole database.
    private const int WholeWithinSeconds = 600;

    private const string ReadLast = "SELECT coalesce(max(last), 0) FROM turn WHERE case_id = $1";

    private const string AddEvents = """
        INSERT INTO event (case_id, sequence, turn_id, at, body, aside, hash)
        SELECT $1, * FROM unnest($2::bigint[], $3::text[], $4::bigint[], $5::text[], $6::text[], $7::text[])
        ON CONFLICT DO NOTHING
        """;

    private const string AddTurn = "INSERT INTO turn VALUES ($1, $2, $3, $4) ON CONFLICT DO NOTHING";

    private const string AddJob = """
        INSERT INTO job SELECT $1, $2, $3, $3, max(number) FROM event WHERE case_id = $1
        ON CONFLICT (id) DO UPDATE
        SET title = coalesce(job.title, excluded.title), last_at = excluded.last_at, last_event = excluded.last_event
        """;

    /// <summary>The names of all cases, in ordinal order; also of those whose entries somebody took away.</summary>
    public async Task<ImmutableArray<string>> NamesAsync()
    {
        await using var command = Command(
            """SELECT case_id COLLATE "C" AS id FROM event UNION SELECT case_id COLLATE "C" FROM turn UNION SELECT id COLLATE "C" FROM job ORDER BY id""");
        command.CommandTimeout = WholeWithinSeconds;
        await using var found = await command.ExecuteReaderAsync(cancel);
        var names = ImmutableArray.CreateBuilder<string>();
        while (await found.ReadAsync(cancel)) names.Add(found.GetString(0));
        return names.ToImmutable();
    }

    /// <summary>A whole case.</summary>
    /// <exception cref="CaseFileException">A row has another form than this program gives it.</exception>
    public async Task<KeptLog> ReadAsync(string caseId)
    {
        // The turns first: a turn that is added in between is then only not asked for.
        long last = await LastAsync(caseId);
        await using var command = Command(ReadRows, caseId);
        await using var found = await command.ExecuteReaderAsync(cancel);
        var rows = ImmutableArray.CreateBuilder<LogRow>();
        while (await found.ReadAsync(cancel)) rows.Add(Row(found, caseId));
        return new KeptLog(rows.ToImmutable(), last);
    }

    /// <summary>The last sequence number of a case; 0 for one that is not there.</summary>
    public async Task<long> LastAsync(string caseId) => (long)(await ScalarAsync(ReadLast, caseId))!;

    /// <summary>The last entry of a case; number 0 for one that is not there.</summary>
    public async Task<(long Sequence, string Hash)> LastEntryAsync(string caseId)
    {
        await using var command = Command(
            "SELECT sequence, hash FROM event WHERE case_id = $1 ORDER BY sequence DESC LIMIT 1", caseId);
        await using var found = await command.ExecuteReaderAsync(cancel);
        return await found.ReadAsync(cancel) ? (found.GetInt64(0), found.GetString(1)) : (0, Chain.Beginning);
    }

    /// <summary>The places of a turn in the log; null when it is not there.</summary>
    public async Task<(int First, int Last)?> FindTurnAsync(string caseId, string turnId)
    {
        await using var command =
            Command("SELECT first, last FROM turn WHERE case_id = $1 AND turn_id = $2", caseId, turnId);
        await using var found = await command.ExecuteReaderAsync(cancel);
        return await found.ReadAsync(cancel) ? ((int)found.GetInt64(0), (int)found.GetInt64(1)) : null;
    }

    /// <summary>Adds the rows of one turn.</summary>
    /// <returns>False when another turn took one of its places: then the transaction must be given up.</returns>
    public async Task<bool> AddAsync(string caseId, ImmutableArray<LogRow> rows, string? title)
    {
        int added = await RunAsync(AddEvents, caseId, Each(rows, r => r.Sequence), Each(rows, r => r.TurnId),
            Each(rows, Time), Each(rows, r => r.Body), Each(rows, r => r.Aside), Each(rows, r => r.Hash));
        if (added < rows.Length) return false;
        if (await RunAsync(AddTurn, caseId, rows[0].TurnId, rows[0].Sequence, rows[^1].Sequence) == 0) return false;
        await RunAsync(AddJob, caseId, title, Time(rows[^1]));
        return true;
    }

    /// <summary>Makes a case found by the serial numbers that its events write down.</summary>
    public async Task AddSerialsAsync(string caseId, IEnumerable<CaseEvent> events)
    {
        foreach (string serial in Serials.In(events))
            await RunAsync("INSERT INTO unit_serial VALUES ($1, $2) ON CONFLICT DO NOTHING", serial, caseId);
    }

    public async Task<int> RunAsync(string sql, params object?[] values)
    {
        await using var command = Command(sql, values);
        return await command.ExecuteNonQueryAsync(cancel);
    }

    public NpgsqlCommand Command(string sql, params object?[] values)
    {
        var command = new NpgsqlCommand(sql, connection);
        foreach (object? value in values)
            command.Parameters.Add(value is null ? Nothing() : new NpgsqlParameter { Value = value });
        return command;
    }

    private async Task<object?> ScalarAsync(string sql, params object?[] values)
    {
        await using var command = Command(sql, values);
        return await command.ExecuteScalarAsync(cancel);
    }

    private static NpgsqlParameter Nothing() =>
        new() { Value = DBNull.Value, NpgsqlDbType = NpgsqlTypes.NpgsqlDbType.Text };

    private static T[] Each<T>(ImmutableArray<LogRow> rows, Func<LogRow, T> of) => [.. rows.Select(of)];

    private static long Time(LogRow row) => row.At.ToUnixTimeMilliseconds();

    private static LogRow Row(NpgsqlDataReader row, string caseId)
    {
        long sequence = row.GetInt64(0);
        try
        {
            return new LogRow(
                sequence, row.GetString(1), DateTimeOffset.FromUnixTimeMilliseconds(row.GetInt64(2)), row.GetString(3),
                row.IsDBNull(4) ? null : row.GetString(4), row.GetString(5));
        }
        catch (ArgumentOutOfRangeException error)
        {
            throw Chain.Altered(caseId, sequence, error.Message);
        }
    }
}
