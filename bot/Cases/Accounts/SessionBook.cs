namespace DxAssistant.Cases.Accounts;

/// <summary>
/// The sessions that go on, so that one can be ended for good although its browser still holds its cookie.
/// </summary>
public sealed class SessionBook
{
    /// <summary>The longest that a session goes on, used or not.</summary>
    /// <remarks>A week of work: whoever carries a phone signs in on Monday. Common practice, no source.</remarks>
    public static readonly TimeSpan Longest = TimeSpan.FromDays(7);

    private readonly BookTables tables;
    private readonly TimeProvider clock;

    internal SessionBook(BookTables tables, TimeProvider clock) => (this.tables, this.clock) = (tables, clock);

    private long Oldest => (clock.GetUtcNow() - Longest).ToUnixTimeMilliseconds();

    /// <summary>Begins a session, and forgets those that are over.</summary>
    /// <param name="id">Nobody else's, and not to be guessed.</param>
    public void Begin(string id, string account) => tables.Whole(
        ("DELETE FROM session WHERE began < @oldest", [("oldest", Oldest)]),
        ("INSERT INTO session VALUES (@id, @account, @at)",
            [("id", id), ("account", account), ("at", clock.GetUtcNow().ToUnixTimeMilliseconds())]));

    /// <summary>Whether a session of an account goes on.</summary>
    public bool GoesOn(string id, string account) => tables.Rows(
        "SELECT 1 FROM session WHERE id = @id AND account = @account AND began >= @oldest", row => 1,
        ("id", id), ("account", account), ("oldest", Oldest)).Length > 0;

    /// <summary>Ends a session; nothing happens when it is over already.</summary>
    public void End(string id) => tables.Run("DELETE FROM session WHERE id = @id", ("id", id));
}
