using Npgsql;

namespace DxAssistant.Cases.Postgres;

/// <summary>The tables in PostgreSQL, brought to the present version step by step.</summary>
internal static class PostgresSchema
{
    // Several servers may start at once; one of them makes the tables. The number is this program's own.
    private const string OneAtATime = "SELECT pg_advisory_xact_lock(7305812)";

    // Bodies are text, not jsonb: their bytes are hashed, and jsonb would write them anew.
    private const string FirstTables = """
        CREATE TABLE schema_version (version integer NOT NULL);
        CREATE TABLE job (
            id text PRIMARY KEY, title text, opened_at bigint NOT NULL, last_at bigint NOT NULL, last_event bigint NOT NULL);
        CREATE INDEX job_by_last_event ON job (last_event DESC);
        CREATE TABLE turn (
            case_id text NOT NULL, turn_id text NOT NULL, first bigint NOT NULL, last bigint NOT NULL,
            PRIMARY KEY (case_id, turn_id));
        CREATE TABLE event (
            number bigint GENERATED ALWAYS AS IDENTITY, case_id text COLLATE "C" NOT NULL, sequence bigint NOT NULL,
            turn_id text NOT NULL, at bigint NOT NULL, body text NOT NULL, aside text, hash text NOT NULL,
            PRIMARY KEY (case_id, sequence));
        """;

    private const string JobTables =
        """CREATE TABLE unit_serial (serial text NOT NULL, case_id text COLLATE "C" NOT NULL, PRIMARY KEY (serial, case_id));""";

    private const string PhotoTable =
        """CREATE TABLE photo (case_id text COLLATE "C" NOT NULL, hash text NOT NULL, bytes bytea NOT NULL, PRIMARY KEY (case_id, hash));""";

    private const string WorkTables = """
        ALTER TABLE job ADD COLUMN series text COLLATE "C", ADD COLUMN fault text COLLATE "C", ADD COLUMN ended text;
        CREATE INDEX job_by_series ON job (series, last_event DESC);
        CREATE INDEX job_by_fault ON job (fault, last_event DESC);
        CREATE TABLE work_text (case_id text NOT NULL, sequence bigint NOT NULL, words tsvector NOT NULL, PRIMARY KEY (case_id, sequence));
        CREATE INDEX work_text_by_words ON work_text USING gin (words);
        """;

    private const string BlankedTable = """
        CREATE TABLE blanked (case_id text PRIMARY KEY, last_event bigint NOT NULL);
        CREATE INDEX job_by_last_at ON job (last_at);
        """;

    // Tables of millions of cases, or another server that makes them just now.
    private const int StepWithinSeconds = 3600;

    // The step that needs the logs to be read, and not only tables to be made.
    private const int FirstWithWork = 4;

    // A step that was ever shipped is never changed; what comes later is a new step.
    private static readonly string[] Steps = [FirstTables, JobTables, PhotoTable, WorkTables, BlankedTable];

    /// <summary>The version this program writes. A database of a later one is left alone.</summary>
    public static int Version => Steps.Length;

    /// <summary>Makes the tables and brings older ones up to date; all of it or nothing.</summary>
    /// <exception cref="CaseFileException">The tables are of a later version of the program.</exception>
    public static async Task EnsureAsync(NpgsqlDataSource source, CancellationToken cancel)
    {
        await using var connection = await source.OpenConnectionAsync(cancel);
        await using var transaction = await connection.BeginTransactionAsync(cancel);
        await RunAsync(connection, OneAtATime, cancel);
        int version = await ReadAsync(connection, cancel);
        if (version > Version)
        {
            throw new CaseFileException(
                $"the database {connection.Database} has schema version {version}, this program knows {Version}: use a newer program, or another --store database");
        }

        foreach (string step in Steps.Skip(version)) await RunAsync(connection, step, cancel);
        if (version is > 0 and < FirstWithWork) await PostgresWork.FillAllAsync(connection, cancel);
        if (version < Version)
            await RunAsync(connection, $"DELETE FROM schema_version; INSERT INTO schema_version VALUES ({Version})",
                cancel);
        await transaction.CommitAsync(cancel);
    }

    private static async Task<int> ReadAsync(NpgsqlConnection connection, CancellationToken cancel)
    {
        await using var any = new NpgsqlCommand("SELECT to_regclass('schema_version') IS NOT NULL", connection);
        if (!(bool)(await any.ExecuteScalarAsync(cancel))!) return 0;
        await using var version = new NpgsqlCommand("SELECT version FROM schema_version", connection);
        return (int)(await version.ExecuteScalarAsync(cancel) ?? 0);
    }

    private static async Task RunAsync(NpgsqlConnection connection, string sql, CancellationToken cancel)
    {
        await using var command = new NpgsqlCommand(sql, connection) { CommandTimeout = StepWithinSeconds };
        await command.ExecuteNonQueryAsync(cancel);
    }
}
