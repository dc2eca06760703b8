using System.Collections.Immutable;
using System.Data.Common;

namespace DxAssistant.Cases.Accounts;

/// <summary>Accounts, tokens of other programs, who may see which case, and the audit lines. Safe to use from many
/// threads.</summary>
/// <remarks>While it holds no account, the program belongs to the one person at this machine.</remarks>
public sealed class AccountBook
{
    private const string Noted = "INSERT INTO audit (at, who, did, done_to) VALUES (@at, @who, @did, @to)";

    private readonly BookTables tables;
    private readonly TimeProvider clock;
    private volatile bool any;

    internal AccountBook(Func<DbConnection> connect, string made, TimeProvider clock)
    {
        this.clock = clock;
        tables = new BookTables(connect);
        tables.Run(made);
        (Sessions, Company, Keys) = (new SessionBook(tables, clock), new CompanyBook(tables), new KeyBook(tables));
        any = tables.Rows("SELECT 1 FROM account LIMIT 1", row => 1).Length > 0;
    }

    /// <summary>Who is signed in where.</summary>
    public SessionBook Sessions { get; }

    /// <summary>Whom a company's own sign-in means by its names.</summary>
    public CompanyBook Company { get; }

    /// <summary>What protects the cookies of sessions.</summary>
    public KeyBook Keys { get; }

    /// <summary>Whether anybody has an account.</summary>
    public bool HasAccounts => any || (any = tables.Rows("SELECT 1 FROM account LIMIT 1", row => 1).Length > 0);

    /// <summary>All accounts, by name.</summary>
    public ImmutableArray<Account> Accounts() => tables.Rows(AccountRow.Select + " ORDER BY name", AccountRow.Read);

    /// <summary>The account of a name; null when there is none.</summary>
    public Account? Find(string name) =>
        tables.Rows(AccountRow.Select + " WHERE name = @name", AccountRow.Read, ("name", name)).FirstOrDefault();

    /// <summary>Adds an account.</summary>
    /// <returns>False when the name is taken.</returns>
    public bool Add(Account account)
    {
        bool added = tables.Run(AccountRow.Insert, AccountRow.Values(account)) == 1;
        if (added) any = true;
        return added;
    }

    /// <summary>Puts an account in the place of the one with the same name and the given stamp.</summary>
    /// <param name="stamp">The stamp it had when it was read.</param>
    /// <returns>False when it was changed or deleted meanwhile.</returns>
    public bool Replace(Account account, string stamp) =>
        tables.Run(AccountRow.Update, [.. AccountRow.Values(account), ("was", stamp)]) == 1;

    /// <summary>
    /// Writes down that a name was not let in, counts a wrong password and locks the account when there were too many.
    /// Counts right however many try at once, and not while the account is locked.
    /// </summary>
    /// <param name="name">
    /// Of an account or of none: the same is written in one go, so that the time it takes does not tell which.
    /// </param>
    /// <param name="most">So many in a row lock it; 1 or more.</param>
    /// <param name="until">How long it is locked then, UTC.</param>
    public void CountFailure(string name, int most, DateTimeOffset until) => tables.Whole(
        ("""
        UPDATE account SET failed_tries = failed_tries + 1,
            locked_until = CASE WHEN (failed_tries + 1) % @most = 0 THEN @until ELSE locked_until END
        WHERE name = @name AND (locked_until IS NULL OR locked_until <= @at)
        """, [("name", name), ("most", most), ("until", until.ToUnixTimeMilliseconds()), ("at", Now())]),
        (Noted, [("at", Now()), ("who", name), ("did", "was not let in"), ("to", "")]));

    /// <summary>Forgets wrong passwords after a right one.</summary>
    public void ClearFailures(string name) =>
        tables.Run("UPDATE account SET failed_tries = 0, locked_until = NULL WHERE name = @name", ("name", name));

    /// <summary>Keeps a token under the hash of its secret.</summary>
    public void AddToken(ApiToken token, string hash) =>
        tables.Run(TokenRow.Insert, [.. TokenRow.Values(token), ("hash", hash)]);

    /// <summary>The token with this secret's hash, if it is good; null otherwise.</summary>
    public ApiToken? FindToken(string hash) =>
        tables.Rows(TokenRow.Select + " WHERE hash = @hash AND revoked_at IS NULL", TokenRow.Read, ("hash", hash))
            .FirstOrDefault();

    /// <summary>All tokens, oldest first, revoked ones too.</summary>
    public ImmutableArray<ApiToken> Tokens() => tables.Rows(TokenRow.Select + " ORDER BY made_at, id", TokenRow.Read);

    /// <summary>Puts another secret's hash in the place of a token's own.</summary>
    /// <returns>False when there is no good token of that name.</returns>
    public bool Renew(string id, string hash) =>
        tables.Run("UPDATE token SET hash = @hash WHERE id = @id AND revoked_at IS NULL", ("id", id),
            ("hash", hash)) == 1;

    /// <summary>Ends a token.</summary>
    /// <returns>False when there is no good token of that name.</returns>
    public bool Revoke(string id) => tables.Run(
        "UPDATE token SET revoked_at = @at WHERE id = @id AND revoked_at IS NULL", ("id", id), ("at", Now())) == 1;

    /// <summary>Lets an account see and work on a case.</summary>
    public void Grant(string caseId, string account) => tables.Run(
        "INSERT INTO case_grant VALUES (@case, @account, @at) ON CONFLICT DO NOTHING",
        ("case", caseId), ("account", account), ("at", Now()));

    /// <summary>Takes back what <see cref="Grant"/> gave.</summary>
    /// <returns>False when nothing was given.</returns>
    public bool TakeBack(string caseId, string account) => tables.Run(
        "DELETE FROM case_grant WHERE case_id = @case AND account = @account", ("case", caseId),
        ("account", account)) == 1;

    /// <summary>Whether an account was let into a case.</summary>
    public bool MaySee(string caseId, string account) => tables.Rows(
        "SELECT 1 FROM case_grant WHERE case_id = @case AND account = @account", row => 1,
        ("case", caseId), ("account", account)).Length > 0;

    /// <summary>The cases an account was let into.</summary>
    public ImmutableHashSet<string> CasesOf(string account) => tables.Rows(
        "SELECT case_id FROM case_grant WHERE account = @account", row => row.GetString(0), ("account", account))
        .ToImmutableHashSet(StringComparer.Ordinal);

    /// <summary>Writes down who saw or changed what.</summary>
    public void Note(string who, string did, string to = "") =>
        tables.Run(Noted, ("at", Now()), ("who", who), ("did", did), ("to", to));

    /// <summary>The latest audit lines, newest first.</summary>
    /// <param name="limit">How many at most; 1 or more.</param>
    /// <param name="before">Only lines with a lower number; null for the newest.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="limit"/> is below 1.</exception>
    public ImmutableArray<AuditLine> Audit(int limit, long? before = null)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(limit, 1);
        return tables.Rows(
            "SELECT number, at, who, did, done_to FROM audit WHERE number < @before ORDER BY number DESC LIMIT @limit",
            Line,
            ("before", before ?? long.MaxValue), ("limit", limit));
    }

    /// <summary>All audit lines about what an account did or what was done to it, newest first.</summary>
    public ImmutableArray<AuditLine> AuditOf(string account) => tables.Rows(
        "SELECT number, at, who, did, done_to FROM audit WHERE who = @account OR done_to = @account ORDER BY "
            + "number DESC", Line, ("account", account));

    internal static DateTimeOffset TimeOf(long milliseconds) => DateTimeOffset.FromUnixTimeMilliseconds(milliseconds);

    private static AuditLine Line(DbDataReader row) =>
        new(row.GetInt64(0), TimeOf(row.GetInt64(1)), row.GetString(2), row.GetString(3), row.GetString(4));

    private long Now() => clock.GetUtcNow().ToUnixTimeMilliseconds();
}
