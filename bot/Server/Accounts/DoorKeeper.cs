using DxAssistant.Cases;
using DxAssistant.Cases.Accounts;
using DxAssistant.Server.Channels;
using DxAssistant.Server.Chat;
using DxAssistant.Server.Serving;

namespace DxAssistant.Server.Accounts;

/// <summary>Lets a request pass its door, or says why not: sign in first, or not with these rights.</summary>
internal sealed class DoorKeeper(RequestDelegate next, CaseGrants grants, AccountBook book, ICaseStore store,
    IConfiguration configuration)
{
    private const string CasesPath = "/api/cases";
    private const int LongestNoted = 200;

    public Task InvokeAsync(HttpContext http)
    {
        var door = Doors.Before(http.Request.Path);
        if (door.Roles is null || ChannelSignsIn(http.Request)) return next(http);
        if (Person.Of(http.User) is not { } person) return AskWhoAsync(http);
        return door.Opens(person, Changes(http.Request.Method)) ? PassAsync(http, person) : RefuseAsync(http, person);
    }

    private async Task PassAsync(HttpContext http, Person person)
    {
        // Our own token is no secret of the channel's, and its adapter would try to read it.
        if (IsChannel(http.Request)) http.Request.Headers.Authorization = default;
        if (CaseOf(http.Request.Path) is not { } id) await next(http);
        else if (grants.MaySee(person, id)) await SeeAsync(http, person, id);
        else if ((await store.ReadAsync(id, http.RequestAborted)).IsEmpty) await next(http); // nobody's yet
        else await UnknownAsync(http, person, id);
    }

    // The Bot Framework's own sign-in takes over where it is configured.
    private bool ChannelSignsIn(HttpRequest request) => IsChannel(request) && BotFront.HasAppId(configuration);

    private static bool IsChannel(HttpRequest request) =>
        request.Path.StartsWithSegments(BotFront.Path, StringComparison.OrdinalIgnoreCase);

    private static bool Changes(string method) => !HttpMethods.IsGet(method) && !HttpMethods.IsHead(method);

    private static string? CaseOf(PathString path) =>
        path.StartsWithSegments(CasesPath, StringComparison.OrdinalIgnoreCase, out var rest)
            && rest.Value is { Length: > 1 } text
            ? text.Split('/')[1] : null;

    private Task SeeAsync(HttpContext http, Person person, string id)
    {
        bool looks = http.Request.Path.Value!.Length == CasesPath.Length + 1 + id.Length;
        if (looks && HttpMethods.IsGet(http.Request.Method) && book.HasAccounts) book.Note(person.Name, "saw case", id);
        return next(http);
    }

    private static Task AskWhoAsync(HttpContext http)
    {
        if (IsApi(http.Request))
        {
            return Refusal.Because(StatusCodes.Status401Unauthorized, "Sign in first.").ExecuteAsync(http);
        }

        string from = http.Request.Path + http.Request.QueryString.ToString();
        http.Response.Redirect("/sign-in?then=" + Uri.EscapeDataString(from));
        return Task.CompletedTask;
    }

    private Task RefuseAsync(HttpContext http, Person person)
    {
        book.Note(person.Name, "was refused", Short($"{http.Request.Method} {http.Request.Path}"));
        return IsForAPage(http.Request) ? Pages.RefuseAsync(http) : Refusal.Because(
            StatusCodes.Status403Forbidden, "Your account may not do that. Ask whoever keeps the accounts.")
            .ExecuteAsync(http);
    }

    // A browser that goes to an address, not a script that asks.
    private static bool IsForAPage(HttpRequest request) => !Changes(request.Method) && !IsApi(request)
        && request.Headers.Accept.ToString().Contains("text/html", StringComparison.OrdinalIgnoreCase);

    private static bool IsApi(HttpRequest request) =>
        request.Path.StartsWithSegments("/api", StringComparison.OrdinalIgnoreCase);

    // The same as for a case that does not exist: a name that was guessed tells nothing.
    private Task UnknownAsync(HttpContext http, Person person, string id)
    {
        book.Note(person.Name, "was refused case", Short(id));
        return Refusal.Because(StatusCodes.Status404NotFound, CaseEndpoints.UnknownCase).ExecuteAsync(http);
    }

    private static string Short(string text) => text.Length > LongestNoted ? text[..LongestNoted] : text;
}
