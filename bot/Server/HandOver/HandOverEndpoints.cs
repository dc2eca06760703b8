using DxAssistant.Cases;
using DxAssistant.Cases.Accounts;
using DxAssistant.Cases.Jobs;
using DxAssistant.Server.Accounts;
using DxAssistant.Server.Api;
using DxAssistant.Server.Chat;
using DxAssistant.Server.Desk;

namespace DxAssistant.Server.HandOver;

/// <summary>
/// Handing a case to somebody else while it goes on: a spoken code, joining by it, and taking it back.
/// </summary>
/// <remarks>A code lets one person who may work on cases into this case and no other. Only who opened the case, and who
/// sees all cases anyway, may draw one or take somebody out again.</remarks>
internal sealed class HandOverEndpoints(HandOverBook codes, JobDesk jobs, ICaseStore store, CaseGrants grants,
    AccountBook book)
{
    private const string Part = "Hand-over";
    private const string NotYours = "Only who opened this case, or the desk, may let others in or take them out.";
    private const string TooMany = "Too many codes that were not valid. Wait ten minutes, then ask for a new one.";
    private const string NotValid =
        "That code is not valid: it was used or taken back, is older than ten minutes, or was heard wrong. Ask for a "
            + "new one.";
    private const string NotIn = "Nobody of that name was let into this case.";

    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapPost("/api/cases/{id}/hand-over", OfferAsync)
            .Says<Offer>(Part,
                "Draws a code by which one person is let into the case; an earlier one is no longer valid.")
                .Refuses(404);
        routes.MapDelete("/api/cases/{id}/hand-over", TakeBackAsync)
            .SaysDone(Part, "Makes the code of a case no longer valid.").Refuses(404);
        routes.MapDelete("/api/cases/{id}/hands/{name}", TakeOutAsync).SaysDone(Part, "Takes somebody out of a case.")
            .Refuses(404);
        routes.MapPost("/api/join", JoinAsync).Says<Joined>(Part, "Joins a case by its code.").Takes<JoinRequest>()
            .Refuses(400, 404, 415, 429);
    }

    private async Task<IResult> OfferAsync(string id, HttpContext http, CancellationToken cancel)
    {
        var person = Clerks.PersonOf(http);
        if (await RefuseAsync(id, person, cancel) is { } refusal) return refusal;
        await TakePartAsync(id, person, cancel);
        var (code, until) = await codes.DrawAsync(id, cancel);
        Note(person, "drew a code for case", id);
        return Results.Json(new Offer(code, $"/join#{code.Replace(' ', '-')}", until), ChatJson.Options);
    }

    private async Task<IResult> TakeBackAsync(string id, HttpContext http, CancellationToken cancel)
    {
        if (await RefuseAsync(id, Clerks.PersonOf(http), cancel) is { } refusal) return refusal;
        await codes.TakeBackAsync(id, cancel);
        return Results.NoContent();
    }

    private async Task<IResult> TakeOutAsync(string id, string name, HttpContext http, CancellationToken cancel)
    {
        var person = Clerks.PersonOf(http);
        if (await RefuseAsync(id, person, cancel) is { } refusal) return refusal;
        if (name == await OpenedByAsync(id, cancel) || !grants.TakeOut(name, id))
            return Refusal.Because(StatusCodes.Status404NotFound, NotIn);
        await jobs.DoAsync(id, $"left-{Guid.NewGuid():N}", new JobAct.TakeOut(name), person.Name, cancel);
        Note(person, $"took {name} out of case", id);
        return Results.NoContent();
    }

    private async Task<IResult> JoinAsync(HttpContext http, CancellationToken cancel)
    {
        var (typed, refusal) = await SmallJson.ReadAsync<JoinRequest>(http.Request, cancel);
        if (typed is null) return refusal!;
        var person = Clerks.PersonOf(http);
        var (id, tooMany) = await codes.UseAsync(typed.Code ?? "", person.Name, cancel);
        if (tooMany) return Refusal.Because(StatusCodes.Status429TooManyRequests, TooMany);
        if (id is null) return Refusal.Because(StatusCodes.Status404NotFound, NotValid);
        grants.Let(person, id);
        Note(person, "joined case", id);
        await TakePartAsync(id, person, cancel);
        return Results.Json(new Joined(id), ChatJson.Options);
    }

    private async Task<IResult?> RefuseAsync(string id, Person person, CancellationToken cancel)
    {
        string? openedBy = CaseId.IsWellFormed(id) ? await OpenedByAsync(id, cancel) : null;
        if (openedBy is null) return Refusal.Because(StatusCodes.Status404NotFound, CaseEndpoints.UnknownCase);
        return person.SeesAllCases || person.Name == openedBy
            ? null
            : Refusal.Because(StatusCodes.Status403Forbidden, NotYours);
    }

    private async Task<string?> OpenedByAsync(string id, CancellationToken cancel) =>
        CaseOpener.Of(await store.ReadAsync(id, cancel));

    // Without accounts everybody at this machine is one and the same person.
    private async Task TakePartAsync(string id, Person person, CancellationToken cancel)
    {
        if (book.HasAccounts)
            await jobs.DoAsync(id, $"part-{Guid.NewGuid():N}", new JobAct.TakePart(RoleOf(person)), person.Name,
                cancel);
    }

    private void Note(Person person, string did, string id)
    {
        if (book.HasAccounts) book.Note(person.Name, did, id);
    }

    private static string RoleOf(Person person) => person.Roles.HasFlag(AccountRoles.Desk) ? "desk"
        : person.Roles.HasFlag(AccountRoles.Administrator) ? "administrator" : "technician";

    internal sealed record JoinRequest(string? Code);

    internal sealed record Offer(string Code, string Link, DateTimeOffset Until);

    internal sealed record Joined(string Case);
}
