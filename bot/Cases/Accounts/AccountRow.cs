using System.Data.Common;

namespace DxAssistant.Cases.Accounts;

/// <summary>An account as a row of its table.</summary>
internal static class AccountRow
{
    public const string Select =
        "SELECT name, roles, password_hash, stamp, failed_tries, locked_until, is_open FROM account";

    public const string Insert =
        "INSERT INTO account VALUES (@name, @roles, @hash, @stamp, @failed, @locked, @open) ON CONFLICT DO NOTHING";

    public const string Update = """
        UPDATE account SET roles = @roles, password_hash = @hash, stamp = @stamp, failed_tries = @failed,
            locked_until = @locked, is_open = @open
        WHERE name = @name AND stamp = @was
        """;

    public static Account Read(DbDataReader row) => new(
        row.GetString(0), (AccountRoles)row.GetInt32(1), row.IsDBNull(2) ? null : row.GetString(2), row.GetString(3),
        row.GetInt32(4), row.IsDBNull(5) ? null : AccountBook.TimeOf(row.GetInt64(5)), row.GetInt32(6) == 1);

    public static (string, object?)[] Values(Account account) =>
    [
        ("name", account.Name), ("roles", (int)account.Roles), ("hash", account.PasswordHash), ("stamp", account.Stamp),
        ("failed", account.FailedTries), ("locked", account.LockedUntil?.ToUnixTimeMilliseconds()),
        ("open", account.IsOpen ? 1 : 0),
    ];
}
