using DxAssistant.Cases.Accounts;
using DxAssistant.Server.Chat;

namespace DxAssistant.Server.Accounts;

/// <summary>Accounts, tokens and audit lines for administrators.</summary>
internal sealed class AccountEndpoints(AccountDesk desk, AccountBook book)
{
    private const int AuditPage = 200;

    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/api/accounts", () => Json(desk.Accounts()));
        routes.MapPost("/api/accounts", AddAsync);
        routes.MapPatch("/api/accounts/{name}", ChangeAsync);
        routes.MapGet("/api/tokens", () => Json(book.Tokens().Select(token => TokenView.Of(token))));
        routes.MapPost("/api/tokens", MakeTokenAsync);
        routes.MapDelete("/api/tokens/{id}", (HttpContext http, string id) => Done(desk.Revoke(By(http), id)));
        routes.MapGet("/api/audit", (long? before) => Json(book.Audit(AuditPage, before)));
    }

    private async Task<IResult> AddAsync(HttpContext http, CancellationToken cancel)
    {
        var (asked, refusal) = await SmallJson.ReadAsync<AccountRequest>(http.Request, cancel);
        return refusal ?? Done(desk.Add(By(http), asked!.Name, asked.Roles ?? [], asked.Password ?? ""));
    }

    private async Task<IResult> ChangeAsync(HttpContext http, string name, CancellationToken cancel)
    {
        var (asked, refusal) = await SmallJson.ReadAsync<AccountRequest>(http.Request, cancel);
        if (refusal is not null) return refusal;
        string? problem = asked!.Roles is { } roles ? desk.SetRoles(By(http), name, roles) : null;
        if (problem is null && asked.Open is { } open) problem = desk.SetOpen(By(http), name, open);
        if (problem is null && asked.Password is { } password) problem = desk.SetPassword(By(http), name, password);
        return Done(problem);
    }

    private async Task<IResult> MakeTokenAsync(HttpContext http, CancellationToken cancel)
    {
        var (asked, refusal) = await SmallJson.ReadAsync<TokenRequest>(http.Request, cancel);
        if (refusal is not null) return refusal;
        return desk.MakeToken(By(http), asked!.Label, asked.Scopes ?? [], out string? problem) is { } token
            ? Results.Json(token, ChatJson.Options, statusCode: StatusCodes.Status201Created)
            : Done(problem);
    }

    private static string By(HttpContext http) => Person.Of(http.User)!.Name;

    private static IResult Done(string? problem) => problem is null
        ? Results.NoContent() : Refusal.Because(StatusCodes.Status422UnprocessableEntity, problem);

    private static IResult Json<T>(T body) => Results.Json(body, ChatJson.Options);
}
