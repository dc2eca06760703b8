using Microsoft.Data.Sqlite;

namespace DxAssistant.Cases.Sqlite;

/// <summary>Copies of a whole file of cases, taken while it is in use (SQLite's online backup).</summary>
public static class CaseCopy
{
    /// <summary>Copies all cases to a new file; turns that come in meanwhile are in it wholly or not at all.</summary>
    /// <exception cref="CaseFileException">The file is no file of cases, is damaged, or the new one is there
    /// already.</exception>
    public static void Make(string from, string to)
    {
        if (!File.Exists(from)) throw new CaseFileException($"there is no file {from}");
        if (File.Exists(to))
            throw new CaseFileException($"{to} is there already: name a new file, or move that one away");
        if (Journals(to).FirstOrDefault(File.Exists) is { } journal)
        {
            throw new CaseFileException(
                $"{journal} belongs to the file that was at {to}: a server may still be using it. Stop the server, then move that file away too, or name another place");
        }

        try
        {
            using var source = Open(from, SqliteOpenMode.ReadOnly);
            Check(source, from);
            using var copy = Open(to, SqliteOpenMode.ReadWriteCreate);
            source.BackupDatabase(copy);
        }
        catch (SqliteException error)
        {
            throw SqliteTrouble.Of($"{from} cannot be copied", error);
        }
    }

    // What a program in the middle of its work, or one that was killed, leaves beside the file. SQLite would read it
    // into the copy. Source, from memory: SQLite, Write-Ahead Logging; Atomic Commit.
    private static string[] Journals(string file) => [$"{file}-wal", $"{file}-shm", $"{file}-journal"];

    private static void Check(SqliteConnection source, string file)
    {
        int version = CaseSchema.Read(source);
        if (version == 0) throw new CaseFileException($"{file} is no file of cases");
        if (version > CaseSchema.Version)
        {
            throw new CaseFileException(
                $"{file} has schema version {version}, this program knows {CaseSchema.Version}: use a newer program");
        }

        using var command = source.CreateCommand();
        command.CommandText = "PRAGMA quick_check";
        if (command.ExecuteScalar() as string != "ok")
            throw new CaseFileException($"{file} is damaged: use another copy (the runbook says how to go on)");
    }

    private static SqliteConnection Open(string file, SqliteOpenMode mode)
    {
        var connection = new SqliteConnection(
            new SqliteConnectionStringBuilder { DataSource = file, Mode = mode, Pooling = false }.ToString());
        connection.Open();
        return connection;
    }
}
