using System.Collections.Immutable;

namespace DxAssistant.Cases.Accounts;

/// <summary>
/// The keys that protect what browsers keep, so that all servers on one book, and one that was started anew, know the
/// same sessions.
/// </summary>
/// <remarks>
/// Whoever reads them could write a cookie, but no session that the book does not hold: see <see cref="SessionBook"/>.
/// </remarks>
public sealed class KeyBook
{
    private readonly BookTables tables;

    internal KeyBook(BookTables tables) => this.tables = tables;

    /// <summary>All keys, as whoever made them wrote them.</summary>
    public ImmutableArray<string> All() =>
        tables.Rows("SELECT body FROM session_key ORDER BY id", row => row.GetString(0));

    /// <summary>Keeps a key; one of the same name stays as it is.</summary>
    public void Keep(string id, string body) =>
        tables.Run("INSERT INTO session_key VALUES (@id, @body) ON CONFLICT DO NOTHING", ("id", id), ("body", body));
}
