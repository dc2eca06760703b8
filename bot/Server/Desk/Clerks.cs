using DxAssistant.Cases.Accounts;
using DxAssistant.Cases.Claims;
using DxAssistant.Server.Accounts;

namespace DxAssistant.Server.Desk;

/// <summary>Who acts on claims.</summary>
internal static class Clerks
{
    private const AccountRoles Deciding = AccountRoles.Desk | AccountRoles.Administrator;

    /// <summary>The person of a request: the desk decides and overrides, a program with the right to write claims
    /// decides.</summary>
    public static Clerk Of(HttpContext http)
    {
        var person = PersonOf(http);
        bool isDesk = (person.Roles & Deciding) != 0;
        return person.Scopes is { } scopes
            ? new Clerk(person.Name, MayOverride: false, MayDecide: (scopes & TokenScopes.WriteClaims) != 0)
            : new Clerk(person.Name, isDesk, isDesk);
    }

    public static Person PersonOf(HttpContext http) => Person.Of(http.User) ?? Person.AtThisMachine;
}
