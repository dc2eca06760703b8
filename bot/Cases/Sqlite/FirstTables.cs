using Microsoft.Data.Sqlite;

namespace DxAssistant.Cases.Sqlite;

/// <summary>Step 1: cases, turns and events.</summary>
internal static class FirstTables
{
    private const string Tables = """
        CREATE TABLE schema_version (version INTEGER NOT NULL);
        CREATE TABLE job (
            id TEXT PRIMARY KEY, title TEXT, opened_at INTEGER NOT NULL, last_at INTEGER NOT NULL, last_event INTEGER NOT NULL);
        CREATE INDEX job_by_last_event ON job (last_event DESC);
        CREATE TABLE turn (
            case_id TEXT NOT NULL, turn_id TEXT NOT NULL, first INTEGER NOT NULL, last INTEGER NOT NULL,
            UNIQUE (case_id, turn_id));
        CREATE TABLE event (
            number INTEGER PRIMARY KEY, case_id TEXT NOT NULL, sequence INTEGER NOT NULL,
            turn_id TEXT NOT NULL, at INTEGER NOT NULL, body TEXT NOT NULL,
            UNIQUE (case_id, sequence));
        """;

    public static void Make(SqliteConnection connection) => CaseSchema.Run(connection, Tables);
}
