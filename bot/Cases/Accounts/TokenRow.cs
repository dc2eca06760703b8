using System.Data.Common;

namespace DxAssistant.Cases.Accounts;

/// <summary>A token as a row of its table.</summary>
internal static class TokenRow
{
    public const string Select = "SELECT id, label, scopes, made_by, made_at, revoked_at FROM token";

    public const string Insert =
        "INSERT INTO token (id, label, scopes, made_by, made_at, revoked_at, hash) VALUES (@id, @label, @scopes, @by, "
            + "@at, @revoked, @hash)";

    public static ApiToken Read(DbDataReader row) => new(
        row.GetString(0), row.GetString(1), (TokenScopes)row.GetInt32(2), row.GetString(3),
        AccountBook.TimeOf(row.GetInt64(4)), row.IsDBNull(5) ? null : AccountBook.TimeOf(row.GetInt64(5)));

    public static (string, object?)[] Values(ApiToken token) =>
    [
        ("id", token.Id), ("label", token.Label), ("scopes", (int)token.Scopes), ("by", token.MadeBy),
        ("at", token.MadeAt.ToUnixTimeMilliseconds()), ("revoked", token.RevokedAt?.ToUnixTimeMilliseconds()),
    ];
}
