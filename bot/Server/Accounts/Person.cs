using System.Security.Claims;
using DxAssistant.Cases.Accounts;

namespace DxAssistant.Server.Accounts;

/// <summary>Who asks.</summary>
/// <param name="Name">The account's name, or what stands for the one person at this machine.</param>
/// <param name="Scopes">What a token allows; null for a person.</param>
internal sealed record Person(string Name, AccountRoles Roles, TokenScopes? Scopes)
{
    /// <summary>The one person at this machine, while there are no accounts.</summary>
    public static readonly Person AtThisMachine =
        new(Channels.ActivityReader.Nameless, AccountRoles.Administrator, null);

    private const string RolesClaim = "roles";
    private const string ScopesClaim = "scopes";
    private const string StampClaim = "stamp";
    private const string SessionClaim = "session";

    /// <summary>Whether every case may be seen, not only those the person was let into.</summary>
    public bool SeesAllCases =>
        Scopes is not null || (Roles & (AccountRoles.Desk | AccountRoles.Administrator)) != 0;

    /// <summary>The person of a request; null when nobody signed in.</summary>
    public static Person? Of(ClaimsPrincipal user) => user.Identity is { IsAuthenticated: true, Name: { } name }
        ? new Person(
            name, Enum.Parse<AccountRoles>(user.FindFirstValue(RolesClaim) ?? nameof(AccountRoles.None)),
            user.FindFirstValue(ScopesClaim) is { } scopes ? Enum.Parse<TokenScopes>(scopes) : null)
        : null;

    /// <summary>The stamp of the account as it was when the session began.</summary>
    public static string? StampOf(ClaimsPrincipal? user) => user?.FindFirstValue(StampClaim);

    /// <summary>The name of the session; null where there is none.</summary>
    public static string? SessionOf(ClaimsPrincipal? user) => user?.FindFirstValue(SessionClaim);

    /// <summary>As the framework's kind of user.</summary>
    /// <param name="scheme">How they said who they are.</param>
    /// <param name="session">The name of the session, where one was begun.</param>
    public ClaimsPrincipal ToUser(string scheme, string? stamp = null, string? session = null)
    {
        var claims = new List<Claim> { new(ClaimTypes.Name, Name), new(RolesClaim, Roles.ToString()) };
        if (Scopes is { } scopes) claims.Add(new Claim(ScopesClaim, scopes.ToString()));
        if (stamp is not null) claims.Add(new Claim(StampClaim, stamp));
        if (session is not null) claims.Add(new Claim(SessionClaim, session));
        return new ClaimsPrincipal(new ClaimsIdentity(claims, scheme));
    }
}
