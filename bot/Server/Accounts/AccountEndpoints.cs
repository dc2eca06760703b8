using DxAssistant.Cases.Accounts;
using DxAssistant.Server.Api;
using DxAssistant.Server.Chat;

namespace DxAssistant.Server.Accounts;

/// <summary>Accounts, tokens and audit lines for administrators.</summary>
internal sealed class AccountEndpoints(AccountDesk desk, AccountBook book, RequestKeys keys)
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
        if (refusal is not null) return refusal;

        // The password is no part of what is kept of the request: even its hash is nobody's business.
        string roles = string.Join(',', asked!.Roles ?? []);
        var (name, isFirst, wrong) =
            await keys.TakeAsync(http, $"add account {asked.Name} {roles}", asked.Name ?? "", cancel);
        if (wrong is not null) return wrong;
        return !isFirst && book.Find(AccountName.Read(name) ?? "") is not null
            ? Results.NoContent()
            : Done(desk.Add(By(http), asked.Name, asked.Roles ?? [], asked.Password ?? ""));
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
        string scopes = string.Join(',', asked!.Scopes ?? []);
        var (id, isFirst, wrong) = await keys.TakeAsync(http,
            $"make token {RequestKeys.Short(asked.Label ?? "")} {scopes}", AccountDesk.NewTokenId(), cancel);
        if (wrong is not null) return wrong;
        if (!isFirst && book.Tokens().FirstOrDefault(made => made.Id == id) is { } made) return Again(By(http), made);
        return desk.MakeToken(By(http), id, asked.Label, asked.Scopes ?? [], out string? problem) is { } token
            ? Results.Json(token, ChatJson.Options, statusCode: StatusCodes.Status201Created)
            : Done(problem);
    }

    // Whoever asks again never saw the answer, and its secret is kept nowhere: the token gets a new one.
    private IResult Again(string by, ApiToken made) => desk.RenewToken(by, made) is { } token
        ? Results.Json(token, ChatJson.Options, statusCode: StatusCodes.Status201Created)
        : Refusal.Because(StatusCodes.Status422UnprocessableEntity,
            "The token that this Idempotency-Key made was revoked.");

    private static string By(HttpContext http) => Person.Of(http.User)!.Name;

    private static IResult Done(string? problem) => problem is null
        ? Results.NoContent() : Refusal.Because(StatusCodes.Status422UnprocessableEntity, problem);

    private static IResult Json<T>(T body) => Results.Json(body, ChatJson.Options);
}
