using System.Text.Json;
using DxAssistant.Cases;
using DxAssistant.Cases.Brought;
using DxAssistant.Server.Accounts;
using DxAssistant.Server.Api;
using DxAssistant.Server.Chat;
using DxAssistant.Server.Desk;
using Microsoft.AspNetCore.Http.Features;

namespace DxAssistant.Server.Offline;

/// <summary>A case's log to take along, and the turns that come back.</summary>
internal sealed class BroughtEndpoints(ICaseStore store, BroughtDesk desk, CaseGrants grants)
{
    private const long MostBytes = 16 * 1024 * 1024;
    private const string NotTurns =
        """Send {"basis":0,"turns":[{"turnId":"…","events":[…]}]}, as the engine made them.""";
    private const string Crossed = "Somebody else went on with this case meanwhile. Nothing was changed.";
    private const string Unknown =
        "The pages these answers were worked out on are not kept here any more. Nothing was changed.";
    private const string Odd = "These answers do not follow from the pages they name. Nothing was changed.";

    private static string OfAnother(string who) =>
        $"These answers are from {who}. Sign in as {who} to send them; they wait on this device.";

    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/api/cases/{id}/log", LogAsync)
            .Says<CaseLog>("Cases", "Gives the log of a case, event by event.").Refuses(404);
        routes.MapPost("/api/cases/{id}/brought", TakeAsync)
            .Says<BroughtAnswer.Taken>("Cases", "Takes turns that were worked out elsewhere on the same pages.")
            .Takes<BroughtRequest>().Refuses(400, 404, 409, 410, 422);
    }

    private async Task<IResult> LogAsync(string id, CancellationToken cancel)
    {
        var log = CaseId.IsWellFormed(id) ? await store.ReadAsync(id, cancel) : [];
        return log.IsEmpty
            ? Refusal.Because(StatusCodes.Status404NotFound, CaseEndpoints.UnknownCase)
            : Results.Json(CaseLog.Of(log), ChatJson.Options);
    }

    private async Task<IResult> TakeAsync(string id, HttpContext context, CancellationToken cancel)
    {
        if (!CaseId.IsWellFormed(id)) return Refusal.Because(StatusCodes.Status404NotFound, CaseEndpoints.UnknownCase);
        if (await ReadAsync(context, cancel) is not { IsWhole: true } brought)
            return Refusal.Because(StatusCodes.Status400BadRequest, NotTurns);
        return await desk.TakeAsync(id, brought.Basis, brought.Turns, Clerks.PersonOf(context).Name, cancel) switch
        {
            BroughtAnswer.Taken taken => Take(context, id, brought.Basis, taken),
            BroughtAnswer.UnknownContent => Refusal.Because(StatusCodes.Status410Gone, Unknown),
            BroughtAnswer.OfAnother other => Refusal.Because(StatusCodes.Status403Forbidden, OfAnother(other.Who)),
            BroughtAnswer.DoesNotFollow => Refusal.Because(StatusCodes.Status422UnprocessableEntity, Odd),
            _ => Refusal.Because(StatusCodes.Status409Conflict, Crossed),
        };
    }

    // A case that began without signal is now somebody's.
    private IResult Take(HttpContext context, string id, long basis, BroughtAnswer.Taken taken)
    {
        if (basis == 0) grants.Let(Person.Of(context.User)!, id);
        return Results.Json(taken, ChatJson.Options);
    }

    private static async Task<BroughtRequest?> ReadAsync(HttpContext context, CancellationToken cancel)
    {
        if (!context.Request.HasJsonContentType()) return null;
        if (context.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } size)
            size.MaxRequestBodySize = MostBytes;
        try
        {
            return await JsonSerializer.DeserializeAsync<BroughtRequest>(context.Request.Body, ChatJson.Options,
                cancel);
        }
        catch (Exception error) when (error is JsonException or NotSupportedException)
        {
            return null;
        }
    }
}
