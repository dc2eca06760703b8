using System.Collections.Immutable;
using System.Data.Common;
using DxAssistant.Cases.Log;
using DxAssistant.Cases.Personal;

namespace DxAssistant.Cases.Calls;

/// <summary>The call book in tables of a database, in SQL that SQLite and PostgreSQL read alike.</summary>
public sealed class SqlCallBook : ICallBook
{
    private const string What = "calls";
    private const string Tables = """
        CREATE TABLE IF NOT EXISTS call_slip (
            case_id TEXT PRIMARY KEY, caller TEXT NOT NULL, phone TEXT NOT NULL, due BIGINT NOT NULL, at BIGINT NOT NULL,
            by_whom TEXT NOT NULL);
        CREATE TABLE IF NOT EXISTS call_note (case_id TEXT NOT NULL, at BIGINT NOT NULL, by_whom TEXT NOT NULL, words TEXT NOT NULL);
        CREATE INDEX IF NOT EXISTS call_note_by_case ON call_note (case_id, at);
        """;

    private readonly SharedConnection shared;

    private SqlCallBook(SharedConnection shared) => this.shared = shared;

    /// <summary>Beside the cases of a SQLite file.</summary>
    /// <exception cref="CaseFileException">The file cannot be used.</exception>
    public static SqlCallBook Open(string file) => new(SharedConnection.ToFile(file, Tables, What));

    /// <summary>Lasts as long as the program.</summary>
    public static SqlCallBook InMemory() => new(SharedConnection.ToMemory(Tables, What));

    /// <param name="connection">Of SQLite or PostgreSQL; not open yet.</param>
    /// <exception cref="CaseFileException">The database cannot be used.</exception>
    public static SqlCallBook Open(DbConnection connection) => new(new SharedConnection(connection, Tables, What));

    public Task PutAsideAsync(CallSlip slip, CancellationToken cancel = default) => shared.RunAsync(
        """
        INSERT INTO call_slip VALUES (@p0, @p1, @p2, @p3, @p4, @p5)
        ON CONFLICT (case_id) DO UPDATE SET caller = excluded.caller, phone = excluded.phone, due = excluded.due,
            at = excluded.at, by_whom = excluded.by_whom
        """, cancel, slip.Case, slip.Caller ?? "", slip.Phone ?? "", slip.Due is { } due
            ? Time(due)
            : 0, Time(slip.At), slip.By);

    public Task TakeUpAsync(string caseId, CancellationToken cancel = default) =>
        shared.RunAsync("DELETE FROM call_slip WHERE case_id = @p0", cancel, caseId);

    public Task<ImmutableArray<CallSlip>> WaitingAsync(CancellationToken cancel = default) => shared.RowsAsync(
        "SELECT case_id, caller, phone, due, at, by_whom FROM call_slip ORDER BY due, at, case_id", Slip, cancel);

    public Task NoteAsync(string caseId, CallNote note, CancellationToken cancel = default) => shared.RunAsync(
        "INSERT INTO call_note VALUES (@p0, @p1, @p2, @p3)", cancel, caseId, Time(note.At), note.By, note.Text);

    public Task<ImmutableArray<CallNote>> NotesAsync(string caseId, CancellationToken cancel = default) =>
        shared.RowsAsync(
            "SELECT at, by_whom, words FROM call_note WHERE case_id = @p0 ORDER BY at",
            row => new CallNote(TimeOf(row, 0), row.GetString(1), row.GetString(2)), cancel, caseId);

    public async Task<ImmutableArray<string>> FindAsync(string about, CancellationToken cancel = default)
    {
        var slips = await shared.RowsAsync(
            "SELECT case_id, caller, phone FROM call_slip",
            row => (Case: row.GetString(0), Words: $"{row.GetString(1)} {row.GetString(2)}"), cancel);
        var notes = await shared.RowsAsync("SELECT case_id, words FROM call_note",
            row => (Case: row.GetString(0), Words: row.GetString(1)), cancel);
        return
        [
            .. slips.Concat(notes).Where(kept => Mentions.Are(kept.Words, about)).Select(kept => kept.Case)
                .Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal),
        ];
    }

    public async Task BlankAsync(string caseId, CancellationToken cancel = default)
    {
        await shared.RunAsync("UPDATE call_slip SET caller = '', phone = '' WHERE case_id = @p0", cancel, caseId);
        await shared.RunAsync("UPDATE call_note SET words = @p1 WHERE case_id = @p0", cancel, caseId, Veil.Removed);
        await shared.TidyAsync(cancel);
    }

    public async Task BlankAsync(DateTimeOffset before, CancellationToken cancel = default)
    {
        await shared.RunAsync("UPDATE call_slip SET caller = '', phone = '' WHERE at < @p0", cancel, Time(before));
        await shared.RunAsync("UPDATE call_note SET words = @p1 WHERE at < @p0 AND words <> @p1", cancel, Time(before),
            Veil.Removed);
        await shared.TidyAsync(cancel);
    }

    public ValueTask DisposeAsync() => shared.DisposeAsync();

    private static CallSlip Slip(DbDataReader row) => new(
        row.GetString(0), Said(row.GetString(1)), Said(row.GetString(2)), row.GetInt64(3) == 0 ? null : TimeOf(row, 3),
        TimeOf(row, 4), row.GetString(5));

    private static string? Said(string words) => words.Length == 0 ? null : words;

    private static long Time(DateTimeOffset at) => at.ToUnixTimeMilliseconds();

    private static DateTimeOffset TimeOf(DbDataReader row, int column) =>
        DateTimeOffset.FromUnixTimeMilliseconds(row.GetInt64(column));
}
