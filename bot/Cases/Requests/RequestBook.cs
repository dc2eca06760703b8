using System.Data.Common;

namespace DxAssistant.Cases.Requests;

/// <summary>
/// Requests that make something and bear a key, so that one sent again makes nothing anew; in SQL that SQLite and
/// PostgreSQL read alike.
/// </summary>
/// <remarks>Kept is the name of what was made, not the answer: the answer may hold people's words.</remarks>
public sealed class RequestBook : IAsyncDisposable
{
    private const string What = "requests";
    private const string Tables = """
        CREATE TABLE IF NOT EXISTS keyed_request (
            who TEXT NOT NULL, key TEXT NOT NULL, asked TEXT NOT NULL, made TEXT NOT NULL, at BIGINT NOT NULL, PRIMARY KEY (who, key));
        """;

    private readonly SharedConnection shared;

    private RequestBook(SharedConnection shared) => this.shared = shared;

    /// <summary>Beside the cases of a SQLite file.</summary>
    /// <exception cref="CaseFileException">The file cannot be used.</exception>
    public static RequestBook Open(string file) => new(SharedConnection.ToFile(file, Tables, What));

    /// <summary>Lasts as long as the program.</summary>
    public static RequestBook InMemory() => new(SharedConnection.ToMemory(Tables, What));

    /// <param name="connection">Of SQLite or PostgreSQL; not open yet.</param>
    /// <exception cref="CaseFileException">The database cannot be used.</exception>
    public static RequestBook Open(DbConnection connection) => new(new SharedConnection(connection, Tables, What));

    /// <summary>Takes a key for a request, or finds the request that has it.</summary>
    /// <param name="who">Whose key it is: two people may choose the same.</param>
    /// <param name="asked">The request itself, by which another one under the same key is told.</param>
    /// <param name="made">The name of what it is about to make.</param>
    /// <param name="at">When it came, UTC.</param>
    public async Task<KeyedRequest> TakeAsync(
        string who, string key, string asked, string made, DateTimeOffset at, CancellationToken cancel = default)
    {
        int isFirst = await shared.RunAsync(
            "INSERT INTO keyed_request VALUES (@p0, @p1, @p2, @p3, @p4) ON CONFLICT DO NOTHING", cancel, who, key,
            asked, made, at.ToUnixTimeMilliseconds());
        if (isFirst == 1) return new KeyedRequest(made, IsFirst: true, IsSame: true);
        var found = await shared.RowsAsync(
            "SELECT asked, made FROM keyed_request WHERE who = @p0 AND key = @p1",
            row => (Asked: row.GetString(0), Made: row.GetString(1)), cancel, who, key);
        return found is [var (earlier, name)]
            ? new KeyedRequest(name, IsFirst: false, IsSame: earlier == asked)
            : throw new CaseFileException("the request could not be looked up: send it again");
    }

    /// <summary>Forgets keys from before a time.</summary>
    public Task ForgetAsync(DateTimeOffset before, CancellationToken cancel = default) =>
        shared.RunAsync("DELETE FROM keyed_request WHERE at < @p0", cancel, before.ToUnixTimeMilliseconds());

    public ValueTask DisposeAsync() => shared.DisposeAsync();
}
