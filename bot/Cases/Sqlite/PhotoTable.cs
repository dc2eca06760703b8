using Microsoft.Data.Sqlite;

namespace DxAssistant.Cases.Sqlite;

/// <summary>Step 4: the bytes of photos, beside the logs that name them by hash.</summary>
internal static class PhotoTable
{
    private const string Table =
        "CREATE TABLE photo (case_id TEXT NOT NULL, hash TEXT NOT NULL, bytes BLOB NOT NULL, UNIQUE (case_id, hash));";

    public static void Make(SqliteConnection connection) => CaseSchema.Run(connection, Table);

    /// <summary>The bytes of a photo; null when they are not there.</summary>
    public static byte[]? Read(SqliteConnection connection, string caseId, string hash)
    {
        using var command = connection.CreateCommand();
        command.CommandText = "SELECT bytes FROM photo WHERE case_id = $case AND hash = $hash";
        command.Parameters.AddWithValue("$case", caseId);
        command.Parameters.AddWithValue("$hash", hash);
        return command.ExecuteScalar() as byte[];
    }
}
