using System.Collections.Immutable;
using System.Data.Common;

namespace DxAssistant.Cases.Accounts;

/// <summary>Accounts, tokens of other programs, who may see which case, and the audit lines. Safe to use from many
/// threads.</summary>
/// <remarks>While it holds no account, the program belongs to the one person at this machine.</remarks>
public sealed class AccountBook
{
    private readonly Func<DbConnection> connect;
    private readonly TimeProvider clock;
    private volatile bool any;

    internal AccountBook(Func<DbConnection> connect, string tables, TimeProvider clock)
    {
        this.connect = connect;
        this.clock = clock;
        Run(tables);
        any = Rows("SELECT 1 FROM account LIMIT 1", row => 1).Length > 0;
    }

    /// <summary>Whether anybody has an account.</summary>
    public bool HasAccounts => any || (any = Rows("SELECT 1 FROM account LIMIT 1", row => 1).Length > 0);

    /// <summary>All accounts, by name.</summary>
    public ImmutableArray<Account> Accounts() => Rows(AccountRow.Select + " ORDER BY name", AccountRow.Read);

    /// <summary>The account of a name; null when there is none.</summary>
    public Account? Find(string name) =>
        Rows(AccountRow.Select + " WHERE name = @name", AccountRow.Read, ("name", name)).FirstOrDefault();

    /// <summary>Adds an account.</summary>
    /// <returns>False when the name is taken.</returns>
    public bool Add(Account account)
    {
        bool added = Run(AccountRow.Insert, AccountRow.Values(account)) == 1;
        if (added) any = true;
        return added;
    }

    /// <summary>Puts an account in the place of the one with the same name and the given stamp.</summary>
    /// <param name="stamp">The stamp it had when it was read.</param>
    /// <returns>False when it was changed or deleted meanwhile.</returns>
    public bool Replace(Account account, string stamp) =>
        Run(AccountRow.Update, [.. AccountRow.Values(account), ("was", stamp)]) == 1;

    /// <summary>Counts a wrong password, and locks the account when there were too many. Counts right however many try
    /// at once.</summary>
    /// <param name="most">So many in a row lock it; 1 or more.</param>
    /// <param name="until">How long it is locked then, UTC.</param>
    public void CountFailure(string name, int most, DateTimeOffset until) => Run("""
        UPDATE account SET failed_tries = failed_tries + 1,
            locked_until = CASE WHEN (failed_tries + 1) % @most = 0 THEN @until ELSE locked_until END
        WHERE name = @name
        """, ("name", name), ("most", most), ("until", until.ToUnixTimeMilliseconds()));

    /// <summary>Forgets wrong passwords after a right one.</summary>
    public void ClearFailures(string name) =>
        Run("UPDATE account SET failed_tries = 0, locked_until = NULL WHERE name = @name", ("name", name));

    /// <summary>Keeps a token under the hash of its secret.</summary>
    public void AddToken(ApiToken token, string hash) => Run(TokenRow.Insert, [.. TokenRow.Values(token), ("hash", hash)]);

    /// <summary>The token with this secret's hash, if it is good; null otherwise.</summary>
    public ApiToken? FindToken(string hash) =>
        Rows(TokenRow.Select + " WHERE hash = @hash AND revoked_at IS NULL", TokenRow.Read, ("hash", hash)).FirstOrDefault();

    /// <summary>All tokens, oldest first, revoked ones too.</summary>
    public ImmutableArray<ApiToken> Tokens() => Rows(TokenRow.Select + " ORDER BY made_at, id", TokenRow.Read);

    /// <summary>Ends a token.</summary>
    /// <returns>False when there is no good token of that name.</returns>
    public bool Revoke(string id) => Run(
        "UPDATE token SET revoked_at = @at WHERE id = @id AND revoked_at IS NULL", ("id", id), ("at", Now())) == 1;

    /// <summary>Lets an account see and work on a case.</summary>
    public void Grant(string caseId, string account) => Run(
        "INSERT INTO case_grant VALUES (@case, @account, @at) ON CONFLICT DO NOTHING",
        ("case", caseId), ("account", account), ("at", Now()));

    /// <summary>Takes back what <see cref="Grant"/> gave.</summary>
    /// <returns>False when nothing was given.</returns>
    public bool TakeBack(string caseId, string account) => Run(
        "DELETE FROM case_grant WHERE case_id = @case AND account = @account", ("case", caseId), ("account", account)) == 1;

    /// <summary>Whether an account was let into a case.</summary>
    public bool MaySee(string caseId, string account) => Rows(
        "SELECT 1 FROM case_grant WHERE case_id = @case AND account = @account", row => 1,
        ("case", caseId), ("account", account)).Length > 0;

    /// <summary>The cases an account was let into.</summary>
    public ImmutableHashSet<string> CasesOf(string account) => Rows(
        "SELECT case_id FROM case_grant WHERE account = @account", row => row.GetString(0), ("account", account))
        .ToImmutableHashSet(StringComparer.Ordinal);

    /// <summary>Writes down who saw or changed what.</summary>
    public void Note(string who, string did, string to = "") => Run(
        "INSERT INTO audit (at, who, did, done_to) VALUES (@at, @who, @did, @to)",
        ("at", Now()), ("who", who), ("did", did), ("to", to));

    /// <summary>The latest audit lines, newest first.</summary>
    /// <param name="limit">How many at most; 1 or more.</param>
    /// <param name="before">Only lines with a lower number; null for the newest.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="limit"/> is below 1.</exception>
    public ImmutableArray<AuditLine> Audit(int limit, long? before = null)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(limit, 1);
        return Rows(
            "SELECT number, at, who, did, done_to FROM audit WHERE number < @before ORDER BY number DESC LIMIT @limit", Line,
            ("before", before ?? long.MaxValue), ("limit", limit));
    }

    /// <summary>All audit lines about what an account did or what was done to it, newest first.</summary>
    public ImmutableArray<AuditLine> AuditOf(string account) => Rows(
        "SELECT number, at, who, did, done_to FROM audit WHERE who = @account OR done_to = @account ORDER BY number DESC", Line, ("account", account));

    internal static DateTimeOffset TimeOf(long milliseconds) => DateTimeOffset.FromUnixTimeMilliseconds(milliseconds);

    private static AuditLine Line(DbDataReader row) =>
        new(row.GetInt64(0), TimeOf(row.GetInt64(1)), row.GetString(2), row.GetString(3), row.GetString(4));

    private long Now() => clock.GetUtcNow().ToUnixTimeMilliseconds();

    private int Run(string sql, params (string Name, object? Value)[] values) =>
        Do(sql, values, command => command.ExecuteNonQuery());

    private ImmutableArray<T> Rows<T>(string sql, Func<DbDataReader, T> read, params (string Name, object? Value)[] values) =>
        Do(sql, values, command =>
        {
            using var rows = command.ExecuteReader();
            var all = ImmutableArray.CreateBuilder<T>();
            while (rows.Read()) all.Add(read(rows));
            return all.ToImmutable();
        });

    private T Do<T>(string sql, (string Name, object? Value)[] values, Func<DbCommand, T> work)
    {
        try
        {
            using var connection = connect();
            connection.Open();
            using var command = connection.CreateCommand();
            command.CommandText = sql;
            foreach (var (name, value) in values)
            {
                var parameter = command.CreateParameter();
                (parameter.ParameterName, parameter.Value) = (name, value ?? DBNull.Value);
                command.Parameters.Add(parameter);
            }

            return work(command);
        }
        catch (DbException error)
        {
            throw new CaseFileException($"the book of accounts cannot be used: {error.Message}", error);
        }
    }
}
