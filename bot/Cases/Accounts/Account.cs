namespace DxAssistant.Cases.Accounts;

/// <summary>A person who may sign in.</summary>
/// <param name="Name">What they sign in with; see <see cref="AccountName"/>.</param>
/// <param name="PasswordHash">Made by the password hasher, never the password; null where only the company's own
/// sign-in is used.</param>
/// <param name="Stamp">Changes with the password, the roles and when the account is closed: sessions made before end
/// then.</param>
/// <param name="FailedTries">Wrong passwords since the last right one.</param>
/// <param name="LockedUntil">Until when no password is tried, UTC; null when it is open.</param>
/// <param name="IsOpen">Whether the person may sign in at all.</param>
public sealed record Account(
    string Name, AccountRoles Roles, string? PasswordHash, string Stamp, int FailedTries = 0,
    DateTimeOffset? LockedUntil = null, bool IsOpen = true)
{
    /// <summary>Whether the account has one of these roles, or every right.</summary>
    public bool HasAny(AccountRoles roles) => (Roles & (roles | AccountRoles.Administrator)) != 0;
}
