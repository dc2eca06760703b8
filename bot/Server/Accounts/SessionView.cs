using System.Collections.Immutable;
using DxAssistant.Cases.Accounts;

namespace DxAssistant.Server.Accounts;

/// <summary>Who one is, for the pages.</summary>
/// <param name="Name">Null while nobody signed in.</param>
/// <param name="Accounts">Whether there are accounts at all.</param>
/// <param name="Company">Whether people may sign in at their company.</param>
internal sealed record SessionView(string? Name, ImmutableArray<string> Roles, bool Accounts, bool Company)
{
    /// <param name="person">Null while nobody signed in.</param>
    public static SessionView Of(Person? person, bool hasAccounts, bool company) => person is null
        ? new(null, [], true, company) : new(person.Name, RoleNames.Of(person.Roles), hasAccounts, company);
}
