using System.Security.Claims;
using System.Security.Cryptography;
using DxAssistant.Cases.Accounts;
using Microsoft.AspNetCore.Authentication;

namespace DxAssistant.Server.Accounts;

/// <summary>
/// Begins and ends sessions. A cookie is good only while its session goes on in the book: a copy of one that was kept
/// from a browser is worth nothing after signing out.
/// </summary>
internal sealed class Sessions(AccountBook book)
{
    private const int IdBytes = 16;

    /// <summary>Begins a session; the one that this browser had is over.</summary>
    public async Task BeginAsync(HttpContext http, Account account)
    {
        EndOf(http.User);
        await http.SignInAsync(Schemes.Session, UserOf(account));
    }

    /// <summary>Who a browser is once a session of an account has begun.</summary>
    public ClaimsPrincipal UserOf(Account account)
    {
        string id = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(IdBytes));
        book.Sessions.Begin(id, account.Name);
        return new Person(account.Name, account.Roles, null).ToUser(Schemes.Session, account.Stamp, id);
    }

    /// <summary>Ends the session of this browser for good.</summary>
    public Task EndAsync(HttpContext http)
    {
        EndOf(http.User);
        return http.SignOutAsync(Schemes.Session);
    }

    /// <summary>
    /// Whether the session of a cookie goes on: it was not ended, and neither password nor roles changed, nor was the
    /// account closed.
    /// </summary>
    public bool GoesOn(ClaimsPrincipal? user)
    {
        string name = user?.Identity?.Name ?? "";
        return Person.SessionOf(user) is { } id && book.Find(name) is { IsOpen: true } account
            && account.Stamp == Person.StampOf(user) && book.Sessions.GoesOn(id, name);
    }

    private void EndOf(ClaimsPrincipal user)
    {
        if (Person.SessionOf(user) is { } id) book.Sessions.End(id);
    }
}
