using System.Data.Common;
using Microsoft.Data.Sqlite;

namespace DxAssistant.Cases.Sqlite;

/// <summary>Says what is wrong with a file or a database, and what whoever keeps the program can do.</summary>
internal static class SqliteTrouble
{
    /// <summary>A fault of the file of cases, or of what is kept beside it.</summary>
    /// <param name="what">What could not be done.</param>
    public static CaseFileException Of(string what, Exception error) => new($"{what}: {Why(error)}", error);

    // The primary result code. Source: SQLite documentation, Result and Error Codes.
    private static string Why(Exception error) => (error as SqliteException)?.SqliteErrorCode switch
    {
        5 or 6 => "another program holds the file; send it again in a while, and end that program if it goes on",
        8 or 14 =>
            "the file cannot be opened, or may not be written; give the program's account the right to read and write "
                + "it and its folder, on a disk that may be written",
        10 =>
            "the disk failed; look into the log of the system, and restore the newest backup on another disk if it "
                + "goes on",
        11 or 26 =>
            "the file is damaged; end the program, keep the file, and restore the newest backup (the runbook says how)",
        13 => "the disk is full; make room on it, then send it again",
        null => $"{error.Message}; {StoreTrouble.Remedy}",
        _ => error.Message,
    };
}
