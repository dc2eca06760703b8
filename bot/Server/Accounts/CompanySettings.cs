using System.Collections.Immutable;
using DxAssistant.Cases.Accounts;

namespace DxAssistant.Server.Accounts;

/// <summary>A company's own sign-in.</summary>
/// <param name="Issuer">
/// Where its description is found, below <c>/.well-known/openid-configuration</c>; as its tokens name it.
/// </param>
/// <param name="Client">The name under which it knows this program.</param>
/// <param name="Secret">What this program shows it; null where it wants none.</param>
internal sealed record CompanySettings(Uri Issuer, string Client, string? Secret)
{
    public const string SecretVariable = "DX_COMPANY_SECRET";

    /// <summary>Which of its words about a person is the name of the account here.</summary>
    public string NameClaim { get; init; } = "preferred_username";

    /// <summary>
    /// Which of its words about a person are groups or the like; null where the accounts here say who may what.
    /// </summary>
    public string? RolesClaim { get; init; }

    /// <summary>
    /// What somebody with such a word may do here. With any, accounts are made when people first come.
    /// </summary>
    public ImmutableDictionary<string, AccountRoles> Roles { get; init; } =
        ImmutableDictionary.Create<string, AccountRoles>(StringComparer.Ordinal);

    /// <summary>What is asked for besides openid and profile.</summary>
    public ImmutableArray<string> Scopes { get; init; } = [];
}
