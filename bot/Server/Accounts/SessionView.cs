using System.Collections.Immutable;
using DxAssistant.Cases.Accounts;

namespace DxAssistant.Server.Accounts;

/// <summary>Who one is, for the pages.</summary>
/// <param name="Name">Null while nobody signed in.</param>
/// <param name="Accounts">Whether there are accounts at all.</param>
internal sealed record SessionView(string? Name, ImmutableArray<string> Roles, bool Accounts)
{
    public static readonly SessionView Nobody = new(null, [], true);

    public static SessionView Of(Person person, bool hasAccounts) => new(person.Name, RoleNames.Of(person.Roles), hasAccounts);
}
