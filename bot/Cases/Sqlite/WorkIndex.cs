using System.Collections.Immutable;
using DxAssistant.Cases.WorkList;
using DxAssistant.Conversation.Events;
using Microsoft.Data.Sqlite;

namespace DxAssistant.Cases.Sqlite;

/// <summary>Keeps the work list in step with the logs, inside the transaction that appends to them.</summary>
internal sealed class WorkIndex : IDisposable
{
    private readonly PreparedCommand setLine;
    private readonly PreparedCommand addWords;
    private readonly PreparedCommand knownWords;
    private readonly PreparedCommand dropLine;
    private readonly PreparedCommand dropWords;
    private readonly PreparedCommand putBack;

    public WorkIndex(SqliteConnection connection)
    {
        setLine = new(connection, """
            INSERT INTO work (case_id, title, series, fault, ended, opened_at, last_at, last_event, turns)
            VALUES ($case, $title, $series, $fault, $ended, $at, $at, coalesce((SELECT max(last_event) FROM work), 0) + 1, 1)
            ON CONFLICT (case_id) DO UPDATE SET
                title = coalesce(title, excluded.title), series = coalesce(excluded.series, series),
                fault = coalesce(excluded.fault, fault), ended = CASE WHEN $aside THEN ended ELSE excluded.ended END, last_at = excluded.last_at,
                last_event = excluded.last_event, turns = turns + 1
            RETURNING number * 65536 + min(turns, 65535)
            """, "$case", "$title", "$series", "$fault", "$ended", "$at", "$aside");
        addWords = new(connection, "INSERT OR REPLACE INTO work_text (rowid, words) VALUES ($entry, $words)", "$entry",
            "$words");
        knownWords = new(connection,
            "SELECT words FROM work_text WHERE rowid BETWEEN $entry / 65536 * 65536 AND $entry / 65536 * 65536 + 65535",
            "$entry");
        dropLine = new(connection, "DELETE FROM work WHERE case_id = $case RETURNING number, last_event", "$case");
        dropWords = new(connection,
            "DELETE FROM work_text WHERE rowid BETWEEN $number * 65536 AND $number * 65536 + 65535", "$number");
        putBack = new(connection,
            "UPDATE work SET last_event = coalesce($place, last_event), title = coalesce($title, title) WHERE case_id "
                + "= $case",
            "$case", "$place", "$title");
    }

    /// <summary>Begins a case anew from its log, at its old place in the list.</summary>
    /// <param name="title">Instead of the one in the log; null for that one.</param>
    public void Replace(string caseId, ImmutableArray<StoredEvent> log, string? title = null)
    {
        long? place = Drop(caseId);
        foreach (var (at, events) in WorkFacts.Turns(log)) Add(caseId, at, events);
        putBack.Run(caseId, place, title);
    }

    /// <summary>Adds one turn. Durable only once the caller commits.</summary>
    public void Add(string caseId, DateTimeOffset at, ImmutableArray<CaseEvent> events)
    {
        var facts = WorkFacts.Of(events);
        object? entry = setLine.Scalar(caseId, facts.Title, facts.Series, facts.Fault, facts.Ended,
            at.ToUnixTimeMilliseconds(), facts.IsAside);
        string words = string.Join(' ', WorkWords.Split(facts.Words).Distinct(StringComparer.Ordinal)
            .Except(Known(entry), StringComparer.Ordinal));
        if (words.Length > 0) addWords.Run(entry, words);
    }

    // A word is in the index once a case: "done" stands in every turn, and would be gone through for every turn of all
    // cases.
    private List<string> Known(object? entry)
    {
        using var rows = knownWords.Read(entry);
        var known = new List<string>();
        while (rows.Read()) known.AddRange(rows.GetString(0).Split(' '));
        return known;
    }

    private long? Drop(string caseId)
    {
        long number, place;
        using (var dropped = dropLine.Read(caseId))
        {
            if (!dropped.Read()) return null;
            (number, place) = (dropped.GetInt64(0), dropped.GetInt64(1));
        }

        dropWords.Run(number);
        return place;
    }

    public void Dispose()
    {
        knownWords.Dispose();
        dropLine.Dispose();
        dropWords.Dispose();
        putBack.Dispose();
        setLine.Dispose();
        addWords.Dispose();
    }
}
