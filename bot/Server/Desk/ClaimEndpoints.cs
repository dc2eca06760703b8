using System.Collections.Immutable;
using System.Text;
using DxAssistant.Cases;
using DxAssistant.Cases.Claims;
using DxAssistant.Server.Accounts;
using DxAssistant.Server.Chat;

namespace DxAssistant.Server.Desk;

/// <summary>Claims over HTTP: begin, show, act, list, give out, verify.</summary>
internal sealed class ClaimEndpoints(ClaimDesk desk, IClaimStore claims, CaseGrants grants)
{
    private const string NoClaim = "There is no such claim here. Look in the list of claims.";
    private const string Acts = "Send {\"act\":\"unit|ready|submit|approve|decline|return\",\"after\":NUMBER}, with \"why\" or \"unit\" where the act needs it.";
    private const int Most = 100_000;

    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapPost("/api/cases/{id}/claims", BeginAsync);
        routes.MapGet("/api/claims", ListAsync);
        routes.MapGet("/api/claims.csv", CsvAsync);
        routes.MapGet("/api/claims.json", JsonAsync);
        routes.MapGet("/api/claims/{id}", ShowAsync);
        routes.MapPost("/api/claims/{id}/acts", ActAsync);
        routes.MapGet("/api/claims/verify", VerifyAsync);
    }

    private async Task<IResult> BeginAsync(string id, HttpContext http, CancellationToken cancel) =>
        Answer(CaseId.IsWellFormed(id) ? await desk.BeginAsync(id, Clerks.Of(http), cancel) : new ClaimDone.Unknown(),
            CaseEndpoints.UnknownCase);

    private async Task<IResult> ActAsync(string id, HttpContext http, CancellationToken cancel)
    {
        var request = await ClaimRequest.ReadAsync(http.Request, cancel);
        if (!await SeesAsync(http, id, cancel)) return Refusal.Because(StatusCodes.Status404NotFound, NoClaim);
        return request?.ToAct() is { } act
            ? Answer(await desk.ActAsync(id, act, Clerks.Of(http), request.After, cancel), NoClaim)
            : Refusal.Because(StatusCodes.Status400BadRequest, Acts);
    }

    private async Task<IResult> ShowAsync(string id, HttpContext http, CancellationToken cancel) =>
        await desk.ShowAsync(id, cancel) is { } claim && grants.MaySee(Clerks.PersonOf(http), claim.Case)
        ? Results.Json(claim, ChatJson.Options)
        : Refusal.Because(StatusCodes.Status404NotFound, NoClaim);

    private async Task<IResult> ListAsync(string? state, HttpContext http, CancellationToken cancel) =>
        Results.Json(await HeadsAsync(state, 1000, http, cancel), ChatJson.Options);

    private async Task<IResult> CsvAsync(string? state, HttpContext http, CancellationToken cancel) =>
        Results.Text(ClaimCsv.Of(await WholeAsync(state, http, cancel)), "text/csv; charset=utf-8", Encoding.UTF8);

    private async Task<IResult> JsonAsync(string? state, HttpContext http, CancellationToken cancel) =>
        Results.Json(await WholeAsync(state, http, cancel), ChatJson.Options);

    private async Task<IResult> VerifyAsync(string line, CancellationToken cancel)
    {
        if (VerifyLine.Find(line) is not { } found)
            return Refusal.Because(StatusCodes.Status400BadRequest, "That is no line of a sheet: copy the whole line at its foot, from “claim” to the last digit.");
        var wrong = await desk.VerifyAsync(found, cancel: cancel);
        return Results.Json(new Verified(wrong.IsEmpty, wrong), ChatJson.Options);
    }

    private async Task<ImmutableArray<ClaimExport>> WholeAsync(string? state, HttpContext http, CancellationToken cancel)
    {
        var all = ImmutableArray.CreateBuilder<ClaimExport>();
        foreach (var head in await HeadsAsync(state, Most, http, cancel))
            if (await desk.ShowAsync(head.Id, cancel) is { } claim) all.Add(claim);
        return all.ToImmutable();
    }

    private async Task<ImmutableArray<ClaimHead>> HeadsAsync(string? state, int most, HttpContext http, CancellationToken cancel)
    {
        var seen = grants.Seen(Clerks.PersonOf(http));
        var heads = await claims.ListAsync(
            Enum.TryParse<ClaimState>(state, ignoreCase: true, out var only) ? only : null, null, most, cancel);
        return [.. heads.Where(head => seen(head.Case))];
    }

    // A claim that is somebody else's is as if it were not there; one that is not there is said to be so later.
    private async Task<bool> SeesAsync(HttpContext http, string id, CancellationToken cancel) =>
        await desk.ShowAsync(id, cancel) is not { } claim || grants.MaySee(Clerks.PersonOf(http), claim.Case);

    private static IResult Answer(ClaimDone done, string unknown) => done switch
    {
        ClaimDone.Saved saved => Results.Json(saved.Claim, ChatJson.Options),
        ClaimDone.Overtaken => Refusal.Because(StatusCodes.Status409Conflict, "Somebody else changed the claim meanwhile. Load it again, then decide."),
        ClaimDone.Refused refused => Refusal.Because(StatusCodes.Status422UnprocessableEntity, "This stands in the way.", refused.Missing),
        _ => Refusal.Because(StatusCodes.Status404NotFound, unknown),
    };

    private sealed record Verified(bool Genuine, ImmutableArray<string> Wrong);
}
