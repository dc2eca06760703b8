using System.Globalization;
using Microsoft.Data.Sqlite;

namespace DxAssistant.Cases.Sqlite;

/// <summary>The tables of a case file, brought to the present version step by step.</summary>
internal static class CaseSchema
{
    // A step that was ever shipped is never changed; what comes later is a new step.
    private static readonly Action<SqliteConnection>[] Steps =
        [FirstTables.Make, ChainedLog.Make, JobTables.Make, PhotoTable.Make, BlankedTable.Make];

    /// <summary>The version this program writes. A file of a later one is left alone.</summary>
    public static int Version => Steps.Length;

    /// <summary>Makes the tables in an empty file and brings an older one up to date; all of it or nothing.</summary>
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

        for (int step = version; step < Version; step++) Steps[step](connection);
        if (version < Version)
            Run(connection, $"DELETE FROM schema_version; INSERT INTO schema_version VALUES ({Version});");
        transaction.Commit();
    }

    /// <summary>The version of a file; 0 when it has no tables of cases.</summary>
    public static int Read(SqliteConnection connection)
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
