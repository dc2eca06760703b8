using DxAssistant.Cases.Accounts;
using DxAssistant.Server.Chat;
using Microsoft.AspNetCore.Authentication;

namespace DxAssistant.Server.Accounts;

/// <summary>Signing in, signing out, and who one is.</summary>
internal sealed class SessionEndpoints(SignIn signIn, AccountBook book)
{
    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/api/session", Show);
        routes.MapPost("/api/session", BeginAsync);
        routes.MapDelete("/api/session", (Delegate)EndAsync);
    }

    private IResult Show(HttpContext http) => Results.Json(
        Person.Of(http.User) is { } person ? SessionView.Of(person, book.HasAccounts) : SessionView.Nobody, ChatJson.Options);

    private async Task<IResult> BeginAsync(HttpContext http, CancellationToken cancel)
    {
        if (!book.HasAccounts) return Refusal.Because(StatusCodes.Status409Conflict, "There are no accounts: nobody needs to sign in.");
        var (typed, refusal) = await SmallJson.ReadAsync<SignInRequest>(http.Request, cancel);
        if (typed is null) return refusal!;
        if (signIn.Try(typed.Name, typed.Password) is not { } account)
        {
            book.Note(AccountName.Read(typed.Name) ?? "?", "was not let in");
            return Refusal.Because(
                StatusCodes.Status401Unauthorized,
                "The name or the password is not right. After five wrong ones the account rests for five minutes.");
        }

        var person = new Person(account.Name, account.Roles, null);
        await http.SignInAsync(Schemes.Session, person.ToUser(Schemes.Session, account.Stamp));
        book.Note(account.Name, "signed in");
        return Results.Json(SessionView.Of(person, hasAccounts: true), ChatJson.Options);
    }

    private async Task<IResult> EndAsync(HttpContext http)
    {
        if (Person.Of(http.User) is { } person && book.HasAccounts) book.Note(person.Name, "signed out");
        await http.SignOutAsync(Schemes.Session);
        return Results.Json(SessionView.Nobody, ChatJson.Options);
    }
}
