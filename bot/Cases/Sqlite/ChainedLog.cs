using System.Collections.Immutable;
using System.Text.Json;
using DxAssistant.Cases.Log;
using Microsoft.Data.Sqlite;

namespace DxAssistant.Cases.Sqlite;

/// <summary>Step 2: people's own words beside the entries, and a chain of hashes over each case.</summary>
internal static class ChainedLog
{
    private const string Columns = """
        ALTER TABLE event ADD COLUMN aside TEXT;
        ALTER TABLE event ADD COLUMN hash TEXT NOT NULL DEFAULT '';
        """;

    public static void Make(SqliteConnection connection)
    {
        CaseSchema.Run(connection, Columns);
        foreach (string caseId in CaseList.Names(connection)) Seal(connection, caseId);
    }

    private static void Seal(SqliteConnection connection, string caseId)
    {
        using var write = new PreparedCommand(connection,
            "UPDATE event SET body = $body, aside = $aside, hash = $hash WHERE case_id = $case AND sequence = $sequence",
            "$body", "$aside", "$hash", "$case", "$sequence");
        string last = Chain.Beginning;
        foreach (var old in LogReader.Rows(connection, caseId))
        {
            var row = Chain.Seal(caseId, old.Sequence - 1, last, old.TurnId, old.At, [Entry(old)])[0];
            write.Run(row.Body, row.Aside, row.Hash, caseId, row.Sequence);
            last = row.Hash;
        }
    }

    // An entry that this program does not know keeps its place and its text.
    private static EntryText Entry(LogRow old)
    {
        try
        {
            return Veil.Draw(EventJson.Read(old.Body));
        }
        catch (Exception error) when (error is JsonException or NotSupportedException or InvalidOperationException)
        {
            return new EntryText(old.Body, null);
        }
    }
}
