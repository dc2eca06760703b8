using System.Collections.Immutable;
using DxAssistant.Cases.Log;
using Microsoft.Data.Sqlite;

namespace DxAssistant.Cases.Sqlite;

/// <summary>Changes that concern a whole case at once, each a transaction of its own.</summary>
internal sealed class WholeCase(SqliteConnection connection)
{
    public static T Change<T>(SqliteConnection connection, Func<WholeCase, T> change)
    {
        CaseSchema.Run(connection, "PRAGMA synchronous = FULL; PRAGMA secure_delete = ON; BEGIN IMMEDIATE");
        T done = change(new WholeCase(connection));
        CaseSchema.Run(connection, "COMMIT");

        // What was removed is not to linger in the journal.
        CaseSchema.Run(connection, "PRAGMA wal_checkpoint(TRUNCATE)");
        return done;
    }

    /// <summary>Adds a case from elsewhere; false when its name is taken.</summary>
    public bool TakeOver(string caseId, ImmutableArray<LogRow> rows)
    {
        var log = new KeptLog(rows, rows.Length);
        var events = log.Open(caseId);
        string? title = CaseTitle.OfAll(events);
        if (!LogReader.Rows(connection, caseId, last: 1).IsEmpty) return false;
        using var writer = new TurnWriter(connection);
        foreach (var turn in log.Turns()) writer.Add(caseId, turn, title);
        writer.AddSerials(caseId, events.Select(stored => stored.Event));
        using var index = new WorkIndex(connection);
        index.Replace(caseId, events);
        return true;
    }

    /// <summary>Keeps the bytes of a photo.</summary>
    public bool KeepPhoto(string caseId, string hash, byte[] bytes)
    {
        using var keep = new PreparedCommand(
            connection, "INSERT OR IGNORE INTO photo VALUES ($case, $hash, $bytes)", "$case", "$hash", "$bytes");
        keep.Run(caseId, hash, bytes);
        return true;
    }

    /// <summary>Removes the bytes of a photo.</summary>
    /// <param name="hash">Null for all photos of the case.</param>
    public bool DropPhotos(string caseId, string? hash)
    {
        using var drop = new PreparedCommand(
            connection, "DELETE FROM photo WHERE case_id = $case AND ($hash IS NULL OR hash = $hash)", "$case",
            "$hash");
        drop.Run(caseId, hash);
        return true;
    }

    /// <summary>Removes people's own words, and all photos.</summary>
    /// <returns>How many entries lost some.</returns>
    public int Blank(string caseId)
    {
        var spoken = LogReader.Rows(connection, caseId).Where(row => row.Aside is not null).ToImmutableArray();
        using var write = new PreparedCommand(connection,
            "UPDATE event SET aside = $aside WHERE case_id = $case AND sequence = $sequence",
            "$aside", "$case", "$sequence");
        foreach (var row in spoken) write.Run(Veil.Blank(row).Aside, caseId, row.Sequence);
        using var rename = new PreparedCommand(
            connection, "UPDATE job SET title = $title WHERE id = $case AND title IS NOT NULL", "$title", "$case");
        rename.Run(Veil.Removed, caseId);
        DropPhotos(caseId, null);
        BlankedTable.Set(connection, caseId);
        using var index = new WorkIndex(connection);
        if (!spoken.IsEmpty) index.Replace(caseId, LogReader.Read(connection, caseId).Open(caseId), Veil.Removed);
        return spoken.Length;
    }
}
