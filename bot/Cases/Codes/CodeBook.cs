using System.Collections.Immutable;
using System.Data.Common;

namespace DxAssistant.Cases.Codes;

/// <summary>
/// The codes by which others are let into a case, and who tried in vain; in SQL that SQLite and PostgreSQL read
/// alike, so that they outlast a restart and are the same for all servers on one database.
/// </summary>
public sealed class CodeBook : IAsyncDisposable
{
    private const string What = "codes";
    private const string Tables = """
        CREATE TABLE IF NOT EXISTS join_code (code TEXT PRIMARY KEY, case_id TEXT NOT NULL, until BIGINT NOT NULL);
        CREATE TABLE IF NOT EXISTS join_failure (who TEXT NOT NULL, at BIGINT NOT NULL);
        """;

    private readonly SharedConnection shared;

    private CodeBook(SharedConnection shared) => this.shared = shared;

    /// <summary>Beside the cases of a SQLite file.</summary>
    /// <exception cref="CaseFileException">The file cannot be used.</exception>
    public static CodeBook Open(string file) => new(SharedConnection.ToFile(file, Tables, What));

    /// <summary>Lasts as long as the program.</summary>
    public static CodeBook InMemory() => new(SharedConnection.ToMemory(Tables, What));

    /// <param name="connection">Of SQLite or PostgreSQL; not open yet.</param>
    /// <exception cref="CaseFileException">The database cannot be used.</exception>
    public static CodeBook Open(DbConnection connection) => new(new SharedConnection(connection, Tables, What));

    /// <summary>Makes a code the only one of its case.</summary>
    /// <returns>False, and nothing is changed, when the code stands for a case already.</returns>
    public Task<bool> SetAsync(string caseId, string code, DateTimeOffset until, CancellationToken cancel = default) =>
        shared.WholeAsync(async run =>
        {
            await run("DELETE FROM join_code WHERE case_id = @p0", [caseId]);
            return await run("INSERT INTO join_code VALUES (@p0, @p1, @p2) ON CONFLICT DO NOTHING",
                [code, caseId, Time(until)]) == 1;
        }, cancel);

    /// <summary>Makes the code of a case no longer valid.</summary>
    public Task DropAsync(string caseId, CancellationToken cancel = default) =>
        shared.RunAsync("DELETE FROM join_code WHERE case_id = @p0", cancel, caseId);

    /// <summary>Uses a code up: of all who try it at once, one gets the case.</summary>
    /// <returns>The case; null when the code is not valid.</returns>
    public async Task<string?> TakeAsync(string code, DateTimeOffset now, CancellationToken cancel = default) =>
        (await shared.RowsAsync(
            "DELETE FROM join_code WHERE code = @p0 AND until > @p1 RETURNING case_id", row => row.GetString(0), cancel,
            code, Time(now))).FirstOrDefault();

    /// <summary>Writes down that somebody gave a code that is not valid.</summary>
    public Task FailAsync(string who, DateTimeOffset at, CancellationToken cancel = default) =>
        shared.RunAsync("INSERT INTO join_failure VALUES (@p0, @p1)", cancel, who, Time(at));

    /// <summary>Who gave codes that were not valid, once for each time.</summary>
    public Task<ImmutableArray<string>> FailuresAsync(DateTimeOffset after, CancellationToken cancel = default) =>
        shared.RowsAsync("SELECT who FROM join_failure WHERE at > @p0", row => row.GetString(0), cancel, Time(after));

    /// <summary>Forgets codes that ran out and failures before a time.</summary>
    public async Task TidyAsync(DateTimeOffset now, DateTimeOffset failuresBefore, CancellationToken cancel = default)
    {
        await shared.RunAsync("DELETE FROM join_code WHERE until <= @p0", cancel, Time(now));
        await shared.RunAsync("DELETE FROM join_failure WHERE at <= @p0", cancel, Time(failuresBefore));
    }

    public ValueTask DisposeAsync() => shared.DisposeAsync();

    private static long Time(DateTimeOffset at) => at.ToUnixTimeMilliseconds();
}
