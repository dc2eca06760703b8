using DxAssistant.Cases;
using DxAssistant.Server.Accounts;
using DxAssistant.Server.Channels;
using DxAssistant.Server.Serving;

namespace DxAssistant.Server.Chat;

/// <summary>What the web chat asks for: open a case, take a turn, show a case, list cases.</summary>
internal sealed class CaseEndpoints(LocalChatAdapter adapter, CaseDesk desk, ICaseStore store, CaseGrants grants, Func<InUse> inUse)
{
    private const int Listed = 100;

    // Among so many of the latest cases of all, a technician's own are looked for.
    private const int Searched = 10_000;

    /// <summary>What is said of a name that stands for no case.</summary>
    public const string UnknownCase = "There is no such case here. Open a new sheet, or look in the list of cases.";

    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapPost("/api/cases", OpenAsync);
        routes.MapGet("/api/cases", ListAsync);
        routes.MapGet("/api/cases/{id}", ShowAsync);
        routes.MapPost("/api/cases/{id}/turns", TakeAsync);
    }

    private async Task<IResult> OpenAsync(HttpContext http, CancellationToken cancel)
    {
        var person = Person.Of(http.User)!;
        string id = CaseId.New();
        grants.Let(person, id);
        await adapter.SendAsync(LocalActivity.Opening(id, person.Name), cancel);
        return Results.Json(await ViewAsync(id, cancel), ChatJson.Options, statusCode: StatusCodes.Status201Created);
    }

    private async Task<IResult> ListAsync(HttpContext http, CancellationToken cancel)
    {
        var person = Person.Of(http.User)!;
        var seen = grants.Seen(person);
        var latest = await store.ListAsync(person.SeesAllCases ? Listed : Searched, cancel);
        return Results.Json(latest.Where(line => seen(line.Id)).Take(Listed), ChatJson.Options);
    }

    private async Task<IResult> ShowAsync(string id, CancellationToken cancel) =>
        await ViewAsync(id, cancel) is { } view
            ? Results.Json(view, ChatJson.Options)
            : Refusal.Because(StatusCodes.Status404NotFound, UnknownCase);

    private async Task<IResult> TakeAsync(string id, HttpRequest request, CancellationToken cancel)
    {
        var (turn, refusal) = await TurnRequest.ReadAsync(request, cancel);
        if (turn is null) return refusal!;
        string by = Person.Of(request.HttpContext.User)!.Name;
        var done = await adapter.SendAsync(LocalActivity.Message(id, turn.TurnId, turn.Body, by), cancel);
        if (done.Answer is not DeskAnswer.Answered) return Refusal.Because(StatusCodes.Status404NotFound, UnknownCase);

        var log = await desk.ReadAsync(id, cancel);
        return Results.Json(TurnTaken.Of(CaseSheet.Of(id, log, inUse().Titles), log, turn.TurnId), ChatJson.Options);
    }

    private async Task<CaseSheet?> ViewAsync(string id, CancellationToken cancel)
    {
        var log = CaseId.IsWellFormed(id) ? await desk.ReadAsync(id, cancel) : [];
        return log.IsEmpty ? null : CaseSheet.Of(id, log, inUse().Titles);
    }
}
