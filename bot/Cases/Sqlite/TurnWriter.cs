using System.Collections.Immutable;
using System.Globalization;
using Microsoft.Data.Sqlite;

namespace DxAssistant.Cases.Sqlite;

/// <summary>Writes turns inside a transaction, with commands prepared once.</summary>
internal sealed class TurnWriter : IDisposable
{
    private readonly SqliteConnection connection;
    private readonly PreparedCommand findTurn;
    private readonly PreparedCommand lastSequence;
    private readonly PreparedCommand addEvent;
    private readonly PreparedCommand addTurn;
    private readonly PreparedCommand addJob;

    public TurnWriter(SqliteConnection connection)
    {
        this.connection = connection;
        findTurn = new(
            connection, "SELECT first, last FROM turn WHERE case_id = $case AND turn_id = $turn", "$case", "$turn");
        lastSequence = new(connection, "SELECT coalesce(max(sequence), 0) FROM event WHERE case_id = $case", "$case");
        addEvent = new(connection,
            "INSERT INTO event (case_id, sequence, turn_id, at, body) VALUES ($case, $sequence, $turn, $at, $body)",
            "$case", "$sequence", "$turn", "$at", "$body");
        addTurn = new(
            connection, "INSERT INTO turn VALUES ($case, $turn, $first, $last)", "$case", "$turn", "$first", "$last");
        addJob = new(connection, """
            INSERT INTO job VALUES ($case, $title, $at, $at, last_insert_rowid())
            ON CONFLICT (id) DO UPDATE SET title = coalesce(title, $title), last_at = $at, last_event = excluded.last_event
            """, "$case", "$title", "$at");
    }

    /// <summary>Writes one turn, or says why not. Durable only once the caller commits.</summary>
    public AppendResult Write(AppendRequest request, DateTimeOffset at)
    {
        if (FindTurn(request) is { } earlier) return new AppendResult.DuplicateTurn(earlier);
        long last = Convert.ToInt64(lastSequence.Scalar(request.CaseId), CultureInfo.InvariantCulture);
        if (last != request.ExpectedSequence) return new AppendResult.Conflict(last);

        var added = ImmutableArray.CreateBuilder<StoredEvent>(request.Events.Length);
        long milliseconds = at.ToUnixTimeMilliseconds();
        addTurn.Run(request.CaseId, request.TurnId, last + 1, last + request.Events.Length);
        for (int i = 0; i < request.Events.Length; i++)
        {
            addEvent.Run(request.CaseId, last + 1 + i, request.TurnId, milliseconds, request.Bodies[i]);
            added.Add(new StoredEvent(last + 1 + i, request.TurnId, at, request.Events[i]));
        }

        // Last, because it stores the number of the event just added: the order of the list.
        addJob.Run(request.CaseId, CaseTitle.Of(request.Events), milliseconds);
        return new AppendResult.Appended(added.MoveToImmutable());
    }

    private ImmutableArray<StoredEvent>? FindTurn(AppendRequest request)
    {
        long first, last;
        using (var found = findTurn.Read(request.CaseId, request.TurnId))
        {
            if (!found.Read()) return null;
            (first, last) = (found.GetInt64(0), found.GetInt64(1));
        }

        return LogReader.Read(connection, request.CaseId, first, last);
    }

    public void Dispose()
    {
        findTurn.Dispose();
        lastSequence.Dispose();
        addEvent.Dispose();
        addTurn.Dispose();
        addJob.Dispose();
    }
}
