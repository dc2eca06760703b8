using DxAssistant.Cases.Accounts;
using DxAssistant.Server.Chat;
using DxAssistant.Server.Serving;

namespace DxAssistant.Server.Accounts;

/// <summary>Signing in, signing out, who one is, and one's own password.</summary>
internal sealed class SessionEndpoints(SignIn signIn, Sessions sessions, AccountBook book, ServerSettings settings)
{
    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/api/session", (HttpContext http) => Show(Person.Of(http.User)));
        routes.MapPost("/api/session", BeginAsync);
        routes.MapDelete("/api/session", (Delegate)EndAsync);
        routes.MapPost("/api/session/password", ChangeAsync);
    }

    private IResult Show(Person? person) =>
        Results.Json(SessionView.Of(person, book.HasAccounts, settings.Company is not null), ChatJson.Options);

    private async Task<IResult> BeginAsync(HttpContext http, CancellationToken cancel)
    {
        if (NobodyNeedsTo() is { } refused) return refused;
        var (typed, refusal) = await SmallJson.ReadAsync<SignInRequest>(http.Request, cancel);
        if (typed is null) return refusal!;
        return signIn.Try(typed.Name, typed.Password) is { } account
            ? await LetInAsync(http, account, "signed in")
            : NotRight();
    }

    // By the old password, not by the session: who finds an open browser does not keep the account.
    private async Task<IResult> ChangeAsync(HttpContext http, CancellationToken cancel)
    {
        if (NobodyNeedsTo() is { } refused) return refused;
        var (typed, refusal) = await SmallJson.ReadAsync<PasswordRequest>(http.Request, cancel);
        if (typed is null) return refusal!;
        if (SignIn.Problem(typed.Fresh ?? "") is { } problem)
            return Refusal.Because(StatusCodes.Status422UnprocessableEntity, problem);
        if (signIn.Try(typed.Name, typed.Password) is not { } account) return NotRight();
        return signIn.Change(account.Name, same => same, typed.Fresh)
            ? await LetInAsync(http, book.Find(account.Name)!, "changed own password")
            : Refusal.Because(StatusCodes.Status409Conflict,
                "Somebody else changed the account just now. Sign in, then try again.");
    }

    private async Task<IResult> LetInAsync(HttpContext http, Account account, string did)
    {
        await sessions.BeginAsync(http, account);
        book.Note(account.Name, did);
        return Show(new Person(account.Name, account.Roles, null));
    }

    private async Task<IResult> EndAsync(HttpContext http)
    {
        if (Person.Of(http.User) is { } person && book.HasAccounts) book.Note(person.Name, "signed out");
        await sessions.EndAsync(http);
        return Show(null);
    }

    private IResult? NobodyNeedsTo() => book.HasAccounts
        ? null : Refusal.Because(StatusCodes.Status409Conflict, "There are no accounts: nobody needs to sign in.");

    private static IResult NotRight() => Refusal.Because(
        StatusCodes.Status401Unauthorized,
        "The name or the password is not right. After five wrong ones the account rests for five minutes.");
}
