using System.Collections.Immutable;
using DxAssistant.Cases.Accounts;

namespace DxAssistant.Server.Accounts;

/// <summary>An account as administrators see it.</summary>
/// <param name="Locked">Whether it rests after wrong passwords.</param>
internal sealed record AccountView(string Name, ImmutableArray<string> Roles, bool Open, bool Locked)
{
    public static AccountView Of(Account account, DateTimeOffset now) =>
        new(account.Name, RoleNames.Of(account.Roles), account.IsOpen, account.LockedUntil > now);
}
