using System.Collections.Immutable;
using System.ComponentModel;
using System.Text.Json;
using DxAssistant.Cases;
using DxAssistant.Cases.Calls;
using DxAssistant.Server.Accounts;
using DxAssistant.Server.Api;
using DxAssistant.Server.Chat;
using Microsoft.AspNetCore.Mvc;

namespace DxAssistant.Server.Desk;

/// <summary>Calls over HTTP: put aside, take up, note, list who waits.</summary>
internal sealed class CallEndpoints(ICallBook book, ICaseStore store, CaseGrants grants, RequestKeys keys)
{
    private const string Part = "Calls";
    private const int LongestNote = 2000;
    private const int LongestField = 200;
    private const string Forms =
        "Send {\"caller\",\"phone\",\"due\"} to put the call aside, or {\"text\"} to note something, in at most 2000 "
            + "characters.";

    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/api/calls", WaitingAsync)
            .Says<CallSlip[]>(Part, "Lists the calls put aside, those due first in front.");
        routes.MapGet("/api/cases/{id}/call", ShowAsync).Says<View>(Part, "Shows the call of a case and its notes.")
            .Refuses(404);
        routes.MapPut("/api/cases/{id}/call", PutAsideAsync).Says<View>(Part, "Puts the call of a case aside.")
            .Takes<Slip>().Refuses(400, 404);
        routes.MapDelete("/api/cases/{id}/call", TakeUpAsync).Says<View>(Part, "Takes the call of a case up again.")
            .Refuses(404);
        routes.MapPost("/api/cases/{id}/call/notes", NoteAsync).Says<View>(Part, "Notes something of a call.")
            .Takes<Note>().Refuses(400, 404, 422);
    }

    private async Task<IResult> WaitingAsync(
        [Description("A name, a telephone number however it is spaced, or words of a note; all calls if left out.")] string? text,
        HttpContext http, CancellationToken cancel)
    {
        var seen = grants.Seen(Clerks.PersonOf(http));
        var waiting = (await book.WaitingAsync(cancel)).Where(slip => seen(slip.Case));
        if (string.IsNullOrWhiteSpace(text)) return Results.Json(waiting, ChatJson.Options);
        var fitting = await book.FindAsync(text, cancel);
        return Results.Json(waiting.Where(slip => fitting.Contains(slip.Case)), ChatJson.Options);
    }

    private async Task<IResult> ShowAsync(string id, CancellationToken cancel) => await ViewAsync(id, cancel);

    private async Task<IResult> PutAsideAsync(string id, HttpContext http, CancellationToken cancel)
    {
        var slip = await ReadAsync<Slip>(http.Request, cancel);
        if (slip is null || (slip.Caller?.Length ?? 0) > LongestField || (slip.Phone?.Length ?? 0) > LongestField)
            return Refusal.Because(StatusCodes.Status400BadRequest, Forms);
        if (!await IsThereAsync(id, cancel)) return Unknown();
        await book.PutAsideAsync(
            new CallSlip(id, slip.Caller, slip.Phone, slip.Due, DateTimeOffset.UtcNow, Clerks.Of(http).Name), cancel);
        return await ViewAsync(id, cancel);
    }

    private async Task<IResult> TakeUpAsync(string id, CancellationToken cancel)
    {
        await book.TakeUpAsync(id, cancel);
        return await ViewAsync(id, cancel);
    }

    private async Task<IResult> NoteAsync(
        string id, [FromHeader(Name = RequestKeys.Header), Description(RequestKeys.Says)] string? key, HttpContext http,
        CancellationToken cancel)
    {
        if (await ReadAsync<Note>(http.Request, cancel) is not { Text: { } text }
            || text.Trim().Length is 0 or > LongestNote)
            return Refusal.Because(StatusCodes.Status400BadRequest, Forms);
        if (!await IsThereAsync(id, cancel)) return Unknown();
        var (_, isFirst, refusal) =
            await keys.TakeAsync(http, $"note {RequestKeys.Short(text)} of {id}", "note", cancel);
        if (refusal is not null) return refusal;
        if (isFirst)
            await book.NoteAsync(id, new CallNote(DateTimeOffset.UtcNow, Clerks.Of(http).Name, text.Trim()), cancel);
        return await ViewAsync(id, cancel);
    }

    private async Task<IResult> ViewAsync(string id, CancellationToken cancel) => await IsThereAsync(id, cancel)
        ? Results.Json(new View((await book.WaitingAsync(cancel)).FirstOrDefault(slip => slip.Case == id),
            await book.NotesAsync(id, cancel)), ChatJson.Options)
        : Unknown();

    private async Task<bool> IsThereAsync(string id, CancellationToken cancel) =>
        CaseId.IsWellFormed(id) && !(await store.ReadAsync(id, cancel)).IsEmpty;

    private static IResult Unknown() => Refusal.Because(StatusCodes.Status404NotFound, CaseEndpoints.UnknownCase);

    private static async Task<T?> ReadAsync<T>(HttpRequest request, CancellationToken cancel) where T : class
    {
        try
        {
            return await JsonSerializer.DeserializeAsync<T>(request.Body, ChatJson.Options, cancel);
        }
        catch (JsonException)
        {
            return null;
        }
    }

    internal sealed record Slip(string? Caller, string? Phone, DateTimeOffset? Due);

    internal sealed record Note(string? Text);

    internal sealed record View(CallSlip? Aside, ImmutableArray<CallNote> Notes);
}
