using System.Collections.Immutable;
using System.Text.Json;
using DxAssistant.Conversation;
using Microsoft.Data.Sqlite;

namespace DxAssistant.Cases.Sqlite;

/// <summary>Reads events back.</summary>
internal static class LogReader
{
    /// <summary>The events of a case from one sequence number to another, both included.</summary>
    /// <exception cref="CaseFileException">An entry is not an event this program knows.</exception>
    public static ImmutableArray<StoredEvent> Read(
        SqliteConnection connection, string caseId, long first = 1, long last = long.MaxValue)
    {
        using var command = connection.CreateCommand();
        command.CommandText =
            "SELECT sequence, turn_id, at, body FROM event WHERE case_id = $case AND sequence BETWEEN $first AND $last ORDER BY sequence";
        command.Parameters.AddWithValue("$case", caseId);
        command.Parameters.AddWithValue("$first", first);
        command.Parameters.AddWithValue("$last", last);
        using var rows = command.ExecuteReader();
        var events = ImmutableArray.CreateBuilder<StoredEvent>();
        while (rows.Read()) events.Add(Parse(rows, caseId));
        return events.ToImmutable();
    }

    private static StoredEvent Parse(SqliteDataReader row, string caseId)
    {
        long sequence = row.GetInt64(0);
        try
        {
            var entry = JsonSerializer.Deserialize(row.GetString(3), ConversationJson.Default.CaseEvent)
                ?? throw new JsonException("the entry is null");
            return new StoredEvent(
                sequence, row.GetString(1), DateTimeOffset.FromUnixTimeMilliseconds(row.GetInt64(2)), entry);
        }
        catch (Exception error) when (error is JsonException or NotSupportedException
            or InvalidOperationException or InvalidCastException or ArgumentOutOfRangeException)
        {
            throw new CaseFileException(
                $"entry {sequence} of case {caseId} cannot be read: use the program that wrote it", error);
        }
    }
}
