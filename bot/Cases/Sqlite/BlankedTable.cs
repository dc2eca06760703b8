using System.Collections.Immutable;
using Microsoft.Data.Sqlite;

namespace DxAssistant.Cases.Sqlite;

/// <summary>
/// Step 5: up to which of its events a case has lost its words. Cases blanked by older programs are blanked once
/// more, which changes nothing.
/// </summary>
internal static class BlankedTable
{
    private const string Tables = """
        CREATE TABLE blanked (case_id TEXT PRIMARY KEY, last_event INTEGER NOT NULL) WITHOUT ROWID;
        CREATE INDEX job_by_last_at ON job (last_at);
        """;

    private const string LeftAlone = """
        SELECT id FROM job LEFT JOIN blanked ON blanked.case_id = id
        WHERE last_at < $before AND coalesce(blanked.last_event, 0) < job.last_event ORDER BY last_at, id LIMIT $limit
        """;

    public static void Make(SqliteConnection connection) => CaseSchema.Run(connection, Tables);

    /// <summary>Notes that a case has lost all its words so far.</summary>
    public static void Set(SqliteConnection connection, string caseId)
    {
        using var command = new PreparedCommand(
            connection, "INSERT OR REPLACE INTO blanked SELECT id, last_event FROM job WHERE id = $case", "$case");
        command.Run(caseId);
    }

    /// <inheritdoc cref="ICaseStore.LeftAloneAsync"/>
    public static ImmutableArray<string> Read(SqliteConnection connection, DateTimeOffset before, int limit)
    {
        using var command = connection.CreateCommand();
        command.CommandText = LeftAlone;
        command.Parameters.AddWithValue("$before", before.ToUnixTimeMilliseconds());
        command.Parameters.AddWithValue("$limit", limit);
        using var rows = command.ExecuteReader();
        var names = ImmutableArray.CreateBuilder<string>();
        while (rows.Read()) names.Add(rows.GetString(0));
        return names.ToImmutable();
    }
}
