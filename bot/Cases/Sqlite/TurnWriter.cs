using System.Collections.Immutable;
using DxAssistant.Cases.Log;
using DxAssistant.Conversation.Events;
using Microsoft.Data.Sqlite;

namespace DxAssistant.Cases.Sqlite;

/// <summary>Writes turns inside a transaction, with commands prepared once.</summary>
internal sealed class TurnWriter : IDisposable
{
    private readonly SqliteConnection connection;
    private readonly PreparedCommand findTurn;
    private readonly PreparedCommand lastEntry;
    private readonly PreparedCommand addEvent;
    private readonly PreparedCommand addTurn;
    private readonly PreparedCommand addJob;
    private readonly PreparedCommand addSerial;
    private readonly WorkIndex index;

    public TurnWriter(SqliteConnection connection)
    {
        this.connection = connection;
        findTurn = new(
            connection, "SELECT first, last FROM turn WHERE case_id = $case AND turn_id = $turn", "$case", "$turn");
        lastEntry = new(connection,
            "SELECT sequence, hash FROM event WHERE case_id = $case ORDER BY sequence DESC LIMIT 1", "$case");
        addEvent = new(connection,
            "INSERT INTO event (case_id, sequence, turn_id, at, body, aside, hash) VALUES ($case, $sequence, $turn, "
                + "$at, $body, $aside, $hash)",
            "$case", "$sequence", "$turn", "$at", "$body", "$aside", "$hash");
        addTurn = new(
            connection, "INSERT INTO turn VALUES ($case, $turn, $first, $last)", "$case", "$turn", "$first", "$last");
        addJob = new(connection, """
            INSERT INTO job VALUES ($case, $title, $at, $at, last_insert_rowid())
            ON CONFLICT (id) DO UPDATE SET title = coalesce(title, $title), last_at = $at, last_event = excluded.last_event
            """, "$case", "$title", "$at");
        addSerial = new(connection, "INSERT OR IGNORE INTO unit_serial VALUES ($serial, $case)", "$serial", "$case");
        index = new WorkIndex(connection);
    }

    /// <summary>Writes one turn, or says why not. Durable only once the caller commits.</summary>
    public AppendResult Write(AppendRequest request, DateTimeOffset at)
    {
        if (FindTurn(request) is { } earlier) return new AppendResult.DuplicateTurn(earlier);
        var (last, hash) = LastEntry(request.CaseId);
        if (last != request.ExpectedSequence) return new AppendResult.Conflict(last);

        var rows = Chain.Seal(request.CaseId, last, hash, request.TurnId, at, request.Entries);
        Add(request.CaseId, rows, CaseTitle.Of(request.Events));
        AddSerials(request.CaseId, request.Events);
        index.Add(request.CaseId, at, request.Events);
        return new AppendResult.Appended(StoredEvent.Of(rows, request.Events));
    }

    /// <summary>Adds the rows of one turn as they are. Durable only once the caller commits.</summary>
    /// <param name="title">The title the case gets if it has none yet.</param>
    public void Add(string caseId, ImmutableArray<LogRow> rows, string? title)
    {
        addTurn.Run(caseId, rows[0].TurnId, rows[0].Sequence, rows[^1].Sequence);
        foreach (var row in rows)
        {
            addEvent.Run(caseId, row.Sequence, row.TurnId, Time(row), row.Body, row.Aside, row.Hash);
        }

        // Last, because it stores the number of the event just added: the order of the list.
        addJob.Run(caseId, title, Time(rows[^1]));
    }

    /// <summary>Makes a case found by the serial numbers that its events write down.</summary>
    public void AddSerials(string caseId, IEnumerable<CaseEvent> events)
    {
        foreach (string serial in Serials.In(events)) addSerial.Run(serial, caseId);
    }

    private static long Time(LogRow row) => row.At.ToUnixTimeMilliseconds();

    private (long Sequence, string Hash) LastEntry(string caseId)
    {
        using var found = lastEntry.Read(caseId);
        return found.Read() ? (found.GetInt64(0), found.GetString(1)) : (0, Chain.Beginning);
    }

    private ImmutableArray<StoredEvent>? FindTurn(AppendRequest request)
    {
        long first, last;
        using (var found = findTurn.Read(request.CaseId, request.TurnId))
        {
            if (!found.Read()) return null;
            (first, last) = (found.GetInt64(0), found.GetInt64(1));
        }

        return LogReader.Read(connection, request.CaseId).Open(request.CaseId)[(int)(first - 1)..(int)last];
    }

    public void Dispose()
    {
        findTurn.Dispose();
        lastEntry.Dispose();
        addEvent.Dispose();
        addTurn.Dispose();
        addJob.Dispose();
        addSerial.Dispose();
        index.Dispose();
    }
}
