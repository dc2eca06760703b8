using System.Collections.Immutable;
using System.ComponentModel;
using System.Text;
using DxAssistant.Cases;
using DxAssistant.Cases.Claims;
using DxAssistant.Server.Accounts;
using DxAssistant.Server.Api;
using DxAssistant.Server.Chat;
using Microsoft.AspNetCore.Mvc;

namespace DxAssistant.Server.Desk;

/// <summary>Claims over HTTP: begin, show, act, list, give out, verify.</summary>
internal sealed class ClaimEndpoints(ClaimDesk desk, ClaimPages pages, CaseGrants grants, RequestKeys keys)
{
    private const string Part = "Claims";
    private const string NoClaim = "There is no such claim here. Look in the list of claims.";
    private const string Acts =
        "Send {\"act\":\"unit|ready|submit|approve|decline|return\",\"after\":NUMBER}, with \"why\" or \"unit\" where "
            + "the act needs it.";
    private const int Most = 100_000;

    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapPost("/api/cases/{id}/claims", BeginAsync)
            .Says<ClaimExport>(Part, "Begins a claim from a case; one that is open already is given again.")
            .Refuses(400, 404, 422);
        routes.MapGet("/api/claims", ListAsync).Says<ClaimHead[]>(Part, "Lists claims, last changed first.")
            .Refuses(400);
        routes.MapGet("/api/claims.csv", CsvAsync)
            .Says<string>(Part, "Gives out claims as a table (RFC 4180).", type: "text/csv").Refuses(400);
        routes.MapGet("/api/claims.json", JsonAsync).Says<ClaimExport[]>(Part, "Gives out whole claims.").Refuses(400);
        routes.MapGet("/api/claims/{id}", ShowAsync).Says<ClaimExport>(Part, "Shows a claim.").IsTagged().Refuses(404);
        routes.MapPost("/api/claims/{id}/acts", ActAsync)
            .Says<ClaimExport>(Part, "Does something to a claim.").Takes<ClaimRequest>()
            .Refuses(400, 404, 409, 412, 422);
        routes.MapGet("/api/claims/verify", VerifyAsync)
            .Says<Verified>(Part, "Says whether the line of a sheet belongs to logs that nobody altered.").Refuses(400);
    }

    private async Task<IResult> BeginAsync(
        string id, [FromHeader(Name = RequestKeys.Header), Description(RequestKeys.Says)] string? key, HttpContext http,
        CancellationToken cancel)
    {
        if (await EmptyBody.RefuseAsync(http.Request, cancel) is { } wrong) return wrong;
        var (name, isFirst, refusal) = await keys.TakeAsync(http, $"begin a claim of {id}", ClaimId.New(), cancel);
        if (refusal is not null) return refusal;
        if (!isFirst && await desk.ShowAsync(name, cancel) is { } claim) return Results.Json(claim, ChatJson.Options);
        return Answer(CaseId.IsWellFormed(id)
            ? await desk.BeginAsync(id, Clerks.Of(http), name, cancel)
            : new ClaimDone.Unknown(),
            CaseEndpoints.UnknownCase);
    }

    private async Task<IResult> ActAsync(
        string id, HttpContext http,
        [FromHeader(Name = "If-Match"),
            Description("The ETag of the claim as it was read, instead of \"after\".")] string? known,
        CancellationToken cancel)
    {
        if (Tagged.Unreadable(http.Request) is { } wrong) return wrong;
        var request = await ClaimRequest.ReadAsync(http.Request, cancel);
        if (request?.ToAct() is not { } act) return Refusal.Because(StatusCodes.Status400BadRequest, Acts);
        var claim = await desk.ShowAsync(id, cancel);
        if (claim is null || !grants.MaySee(Clerks.PersonOf(http), claim.Case))
            return Refusal.Because(StatusCodes.Status404NotFound, NoClaim);
        bool isTagged = Tagged.IsConditional(http.Request);
        if (isTagged && Tagged.IsStale(http.Request, claim)) return Tagged.Stale();
        return Answer(await desk.ActAsync(id, act, Clerks.Of(http), isTagged ? claim.Log.Length : request.After,
            cancel), NoClaim);
    }

    private async Task<IResult> ShowAsync(string id, HttpContext http, CancellationToken cancel) =>
        await desk.ShowAsync(id, cancel) is { } claim && grants.MaySee(Clerks.PersonOf(http), claim.Case)
        ? Tagged.Json(claim)
        : Refusal.Because(StatusCodes.Status404NotFound, NoClaim);

    private async Task<IResult> ListAsync(
        [Description("draft, ready, submitted, approved, declined or returned; all if left out.")] string? state,
        [Description("How many a page holds at most, 1 to 1000; 100 if left out.")] int? limit,
        [Description("Where the page begins, as the header Link of the page before names it.")] string? after,
        HttpContext http, CancellationToken cancel)
    {
        if (Paging.Read(limit) is not { } most) return Paging.BadLimit();
        if (OneOf.Refuse<ClaimState>("state", state) is { } wrong) return wrong;
        if (!ClaimPages.TryRead(after, out var place)) return Paging.BadPlace();
        var heads = await pages.ReadAsync(state, most + 1, place, http, cancel);
        Paging.Next(http, "after", heads.Length > most ? ClaimPages.Write(heads[most - 1]) : null);
        return Results.Json(heads.Take(most), ChatJson.Options);
    }

    private async Task<IResult> CsvAsync(string? state, HttpContext http, CancellationToken cancel) =>
        OneOf.Refuse<ClaimState>("state", state)
            ?? Results.Text(ClaimCsv.Of(await WholeAsync(state, http, cancel)), "text/csv; charset=utf-8",
                Encoding.UTF8);

    private async Task<IResult> JsonAsync(string? state, HttpContext http, CancellationToken cancel) =>
        OneOf.Refuse<ClaimState>("state", state)
            ?? Results.Json(await WholeAsync(state, http, cancel), ChatJson.Options);

    private async Task<IResult> VerifyAsync(string line, CancellationToken cancel)
    {
        if (VerifyLine.Find(line) is not { } found)
            return Refusal.Because(StatusCodes.Status400BadRequest,
                "That is no line of a sheet: copy the whole line at its foot, from “claim” to the last digit.");
        var wrong = await desk.VerifyAsync(found, cancel: cancel);
        return Results.Json(new Verified(wrong.IsEmpty, wrong), ChatJson.Options);
    }

    private async Task<ImmutableArray<ClaimExport>> WholeAsync(string? state, HttpContext http,
        CancellationToken cancel)
    {
        var all = ImmutableArray.CreateBuilder<ClaimExport>();
        foreach (var head in await pages.ReadAsync(state, Most, null, http, cancel))
            if (await desk.ShowAsync(head.Id, cancel) is { } claim) all.Add(claim);
        return all.ToImmutable();
    }

    private static IResult Answer(ClaimDone done, string unknown) => done switch
    {
        ClaimDone.Saved saved => Results.Json(saved.Claim, ChatJson.Options),
        ClaimDone.Overtaken =>
            Refusal.Because(StatusCodes.Status409Conflict,
                "Somebody else changed the claim meanwhile. Load it again, then decide."),
        ClaimDone.Refused refused =>
            Refusal.Because(StatusCodes.Status422UnprocessableEntity, "This stands in the way.", refused.Missing),
        _ => Refusal.Because(StatusCodes.Status404NotFound, unknown),
    };

    internal sealed record Verified(bool Genuine, ImmutableArray<string> Wrong);
}
