using System.ComponentModel;
using System.Globalization;
using DxAssistant.Cases;
using DxAssistant.Server.Accounts;
using DxAssistant.Server.Api;
using DxAssistant.Server.Channels;
using DxAssistant.Server.Serving;
using Microsoft.AspNetCore.Mvc;

namespace DxAssistant.Server.Chat;

/// <summary>Opens a case, takes a turn, shows a case, lists cases.</summary>
internal sealed class CaseEndpoints(
    LocalChatAdapter adapter, CaseDesk desk, ICaseStore store, CaseGrants grants, RequestKeys keys, Func<InUse> inUse)
{
    private const string Part = "Cases";
    private const string Place = "Where the page begins, as the header Link of the page before names it.";
    private const string Limit = "How many a page holds at most, 1 to 1000; 100 if left out.";

    /// <summary>What is said of a name that stands for no case.</summary>
    public const string UnknownCase = "There is no such case here. Open a new sheet, or look in the list of cases.";

    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapPost("/api/cases", OpenAsync)
            .Says<CaseSheet>(Part, "Opens a case.", StatusCodes.Status201Created).Refuses(400, 422);
        routes.MapGet("/api/cases", ListAsync)
            .Says<CaseLine[]>(Part, "Lists cases, last added to first.").Refuses(400);
        routes.MapGet("/api/cases/{id}", ShowAsync)
            .Says<CaseSheet>(Part, "Shows a case with all its turns.").IsTagged().Refuses(404);
        routes.MapGet("/api/cases/{id}/turns", TurnsAsync)
            .Says<TurnView[]>(Part, "Lists the turns of a case, in order.").Refuses(400, 404);
        routes.MapPost("/api/cases/{id}/turns", TakeAsync)
            .Says<TurnTaken>(Part, "Takes what a person said or tapped, and answers.").Takes<TurnForm>()
            .Refuses(400, 404, 412, 413, 415);
    }

    private async Task<IResult> OpenAsync(
        HttpContext http, [FromHeader(Name = RequestKeys.Header), Description(RequestKeys.Says)] string? key,
        CancellationToken cancel)
    {
        if (await EmptyBody.RefuseAsync(http.Request, cancel) is { } wrong) return wrong;
        var (id, _, refusal) = await keys.TakeAsync(http, "open a case", CaseId.New(), cancel);
        if (refusal is not null) return refusal;
        var person = Person.Of(http.User)!;
        grants.Let(person, id);
        await adapter.SendAsync(LocalActivity.Opening(id, person.Name), cancel);
        http.Response.Headers.Location = $"/api/cases/{id}";
        return Results.Json(await ViewAsync(id, cancel), ChatJson.Options, statusCode: StatusCodes.Status201Created);
    }

    private async Task<IResult> ListAsync(
        [Description(Limit)] int? limit, [Description(Place)] long? before, HttpContext http, CancellationToken cancel)
    {
        if (Paging.Read(limit) is not { } most) return Paging.BadLimit();
        var page = await store.PageAsync(new CaseQuery(most, before, grants.Own(Person.Of(http.User)!)), cancel);
        Paging.Next(http, "before", page.Next?.ToString(CultureInfo.InvariantCulture));
        return Results.Json(page.Cases, ChatJson.Options);
    }

    private async Task<IResult> ShowAsync(string id, CancellationToken cancel) =>
        await ViewAsync(id, cancel) is { } view ? Tagged.Json(view) : Unknown();

    private async Task<IResult> TurnsAsync(
        string id, [Description(Limit)] int? limit, [Description(Place)] long? after, HttpContext http,
        CancellationToken cancel)
    {
        if (Paging.Read(limit) is not { } most) return Paging.BadLimit();
        if (await ViewAsync(id, cancel) is not { } view) return Unknown();
        var later = view.Turns.Where(turn => turn.Last > (after ?? 0)).Take(most + 1).ToList();
        Paging.Next(http, "after", later.Count > most
            ? later[most - 1].Last.ToString(CultureInfo.InvariantCulture)
            : null);
        return Results.Json(later.Take(most), ChatJson.Options);
    }

    private async Task<IResult> TakeAsync(
        string id, HttpRequest request,
        [FromHeader(Name = "If-Match"),
            Description("The ETag of the case as it was read: the turn is taken only if the case is still so.")] string? known,
        CancellationToken cancel)
    {
        if (Tagged.Unreadable(request) is { } wrong) return wrong;
        var (turn, refusal) = await TurnRequest.ReadAsync(request, cancel);
        if (turn is null) return refusal!;
        var (after, isStale) = await LookAsync(id, turn.TurnId, request, cancel);
        if (isStale) return Tagged.Stale();
        string by = Person.Of(request.HttpContext.User)!.Name;
        var done = await adapter.SendAsync(LocalActivity.Message(id, turn.TurnId, turn.Body, by, after), cancel);
        if (done.Answer is DeskAnswer.Overtaken) return Tagged.Stale();
        if (done.Answer is not DeskAnswer.Answered answered) return Unknown();
        if (answered.Done is { } taken)
            return Results.Json(TurnTaken.Of(answered, taken, inUse().Titles), ChatJson.Options);

        var log = await desk.ReadAsync(id, cancel);
        return Results.Json(TurnTaken.Of(CaseSheet.Of(id, log, inUse().Titles), log, turn.TurnId), ChatJson.Options);
    }

    // A turn that was taken before is answered again, whatever happened since.
    private async Task<(long? After, bool IsStale)> LookAsync(string id, string turnId, HttpRequest request,
        CancellationToken cancel)
    {
        if (!Tagged.IsConditional(request) || await ViewAsync(id, cancel) is not { } view) return (null, false);
        return view.Turns.Any(turn => turn.TurnId == turnId)
            ? (null, false)
            : (view.Last, Tagged.IsStale(request, view));
    }

    private async Task<CaseSheet?> ViewAsync(string id, CancellationToken cancel)
    {
        var log = CaseId.IsWellFormed(id) ? await desk.ReadAsync(id, cancel) : [];
        return log.IsEmpty ? null : CaseSheet.Of(id, log, inUse().Titles);
    }

    private static IResult Unknown() => Refusal.Because(StatusCodes.Status404NotFound, UnknownCase);
}
