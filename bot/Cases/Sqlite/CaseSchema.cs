using System.Globalization;
using Microsoft.Data.Sqlite;

namespace DxAssistant.Cases.Sqlite;

/// <summary>The tables of a case file.</summary>
internal static class CaseSchema
{
    /// <summary>The version this program writes. A file of a later one is left alone.</summary>
    public const int Version = 1;

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

    /// <summary>Makes the tables in an empty file; does nothing to a file that has them.</summary>
    /// <exception cref="CaseFileException">The file was written by a later version of the program.</exception>
    public static void Ensure(SqliteConnection connection)
    {
        using var transaction = connection.BeginTransaction(deferred: false);
        int version = Read(connection);
        if (version > Version)
        {
            throw new CaseFileException(
                $"{connection.DataSource} has schema version {version}, this program knows {Version}: use a newer program, or another --data file");
        }

        if (version == 0) Run(connection, Tables + $"INSERT INTO schema_version VALUES ({Version});");
        transaction.Commit();
    }

    private static int Read(SqliteConnection connection)
    {
        bool any = Scalar(connection, "SELECT count(*) FROM sqlite_master WHERE name = 'schema_version'") > 0;
        return any ? Scalar(connection, "SELECT version FROM schema_version") : 0;
    }

    private static int Scalar(SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        return Convert.ToInt32(command.ExecuteScalar(), CultureInfo.InvariantCulture);
    }

    internal static void Run(SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        command.ExecuteNonQuery();
    }
}
