using System.Collections.Immutable;
using DxAssistant.Cases.Accounts;

namespace DxAssistant.Server.Accounts;

/// <summary>
/// All doors of the server: the one place that says who may do what. What has no door is for administrators.
/// </summary>
internal static class Doors
{
    private const AccountRoles Work = AccountRoles.Technician | AccountRoles.Desk;

    private static readonly Door Otherwise = new("", AccountRoles.Administrator);

    /// <summary>Looked through from the top; the first that stands before an address counts.</summary>
    public static readonly ImmutableArray<Door> All =
    [
        new("/sign-in", null),
        new("/api/session", null),
        new("/api/health", null),
        new("/sw.js", null),
        new("/offline/kit", null),
        new("/offline/engine", null),
        new("/offline/pages", Work | AccountRoles.Author, TokenScopes.ReadContent),
        new("/api/messages", AccountRoles.Administrator, Writes: TokenScopes.Channel),
        new(Api.ApiDescription.Path, null),
        new("/api/content", Work | AccountRoles.Author, TokenScopes.ReadContent),
        new("/api/cases", Work, TokenScopes.ReadCases, TokenScopes.WriteCases),
        new("/", Work | AccountRoles.Author),
        new("/case", Work),
        new("/cases", Work),
        new("/join", Work),
        new("/api/join", Work),
        new("/device", Work | AccountRoles.Author),
        new("/privacy", null),
        new("/api/privacy", null),
        new("/api/personal", AccountRoles.Desk),
        new("/claim", Work),
        new("/claims", Work),
        new("/work", AccountRoles.Desk),
        new("/api/claims", Work, TokenScopes.ReadClaims, TokenScopes.WriteClaims),
        new("/api/claims.csv", Work, TokenScopes.ReadClaims),
        new("/api/claims.json", Work, TokenScopes.ReadClaims),
        new("/api/work", AccountRoles.Desk, TokenScopes.ReadCases),
        new("/api/calls", Work),
        new("/pages", AccountRoles.Author),
        new("/proposals", AccountRoles.Author),
        new("/api/pages", AccountRoles.Author),
        new("/api/proposals", AccountRoles.Author),
        new("/accounts", AccountRoles.Administrator),
        new("/api/accounts", AccountRoles.Administrator),
        new("/api/tokens", AccountRoles.Administrator),
        new("/api/audit", AccountRoles.Administrator),
    ];

    /// <summary>The door before an address.</summary>
    public static Door Before(PathString address) =>
        All.FirstOrDefault(door => door.StandsBefore(address)) ?? Otherwise;
}
