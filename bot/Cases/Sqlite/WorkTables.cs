using System.Collections.Immutable;
using Microsoft.Data.Sqlite;

namespace DxAssistant.Cases.Sqlite;

/// <summary>The tables behind the work list: a line a case, and a full-text index with an entry a turn.</summary>
/// <remarks>
/// An entry's number is that of its case times 65,536 plus that of the turn, so that cases are told from entries
/// without reading any text.
/// </remarks>
internal static class WorkTables
{
    private const string Tables = """
        CREATE TABLE work (
            number INTEGER PRIMARY KEY, case_id TEXT NOT NULL UNIQUE, title TEXT, series TEXT, fault TEXT, ended TEXT,
            opened_at INTEGER NOT NULL, last_at INTEGER NOT NULL, last_event INTEGER NOT NULL, turns INTEGER NOT NULL);
        CREATE INDEX work_by_last_event ON work (last_event DESC);
        CREATE INDEX work_by_series ON work (series, last_event DESC);
        CREATE INDEX work_by_fault ON work (fault, last_event DESC);
        CREATE VIRTUAL TABLE work_text USING fts5(
            words, tokenize = 'unicode61 remove_diacritics 0', prefix = '2 3 4');
        INSERT INTO work_text (work_text, rank) VALUES ('secure-delete', 1);
        """;

    /// <summary>Makes the tables where they are not there yet and fills them from the logs.</summary>
    public static void Ensure(SqliteConnection connection)
    {
        if (Exist(connection)) return;
        using var transaction = connection.BeginTransaction(deferred: false);
        CaseSchema.Run(connection, Tables);
        using (var index = new WorkIndex(connection))
            foreach (string caseId in Names(connection)) Fill(connection, index, caseId);
        transaction.Commit();
    }

    // A case that cannot be read is not in the list, and no reason to leave all others out.
    private static void Fill(SqliteConnection connection, WorkIndex index, string caseId)
    {
        try
        {
            index.Replace(caseId, LogReader.Read(connection, caseId).Open(caseId));
        }
        catch (CaseFileException)
        {
        }
    }

    private static bool Exist(SqliteConnection connection)
    {
        using var command = connection.CreateCommand();
        command.CommandText = "SELECT count(*) FROM sqlite_master WHERE name = 'work'";
        return (long)command.ExecuteScalar()! > 0;
    }

    // In the order of the list, so that the newest has the highest number here too.
    private static ImmutableArray<string> Names(SqliteConnection connection)
    {
        using var command = connection.CreateCommand();
        command.CommandText = "SELECT id FROM job ORDER BY last_event";
        using var rows = command.ExecuteReader();
        var names = ImmutableArray.CreateBuilder<string>();
        while (rows.Read()) names.Add(rows.GetString(0));
        return names.ToImmutable();
    }
}
