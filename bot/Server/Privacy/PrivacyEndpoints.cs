using System.Collections.Immutable;
using System.Text.Json.Nodes;
using DxAssistant.Cases;
using DxAssistant.Cases.Accounts;
using DxAssistant.Cases.Personal;
using DxAssistant.Server.Chat;
using DxAssistant.Server.Desk;
using DxAssistant.Server.Serving;

namespace DxAssistant.Server.Privacy;

/// <summary>What is kept about people: said to everybody; found, given out and removed by the desk.</summary>
internal sealed class PrivacyEndpoints(
    PersonalDesk desk, ICaseStore store, AccountBook book, ServerSettings settings, Func<InUse> inUse)
{
    private const string TooShort = "Say at least three characters of a name, a telephone number or a serial number.";

    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/api/privacy", Show);
        routes.MapGet("/api/personal", GiveOutAsync);
        routes.MapGet("/api/personal/cases", FindAsync);
        routes.MapDelete("/api/personal/cases/{id}", BlankAsync);
    }

    private IResult Show() => inUse().Library is { } library
        ? Results.Json(PrivacyPage.Of(library.Phrases, settings.KeepPersonal), ChatJson.Options)
        : Refusal.Because(StatusCodes.Status404NotFound, "This server answers without pages.");

    private async Task<IResult> FindAsync(string? about, HttpContext http, CancellationToken cancel)
    {
        if (IsTooShort(about)) return Refusal.Because(StatusCodes.Status400BadRequest, TooShort);
        var found = ImmutableArray.CreateBuilder<Found>();
        foreach (string id in await desk.FindAsync(about!, cancel))
            if (await FoundAsync(id, cancel) is { } one) found.Add(one);
        Note(http, "looked for a person", "");
        return Results.Json(found.OrderByDescending(one => one.LastAt), ChatJson.Options);
    }

    private async Task<IResult> GiveOutAsync(string? about, HttpContext http, CancellationToken cancel)
    {
        if (IsTooShort(about)) return Refusal.Because(StatusCodes.Status400BadRequest, TooShort);
        JsonObject all = await desk.GiveOutAsync(about!, cancel);
        Note(http, "gave out what is kept about a person", "");
        http.Response.Headers.ContentDisposition = "attachment; filename=\"person.json\"";
        return Results.Text(all.ToJsonString(), "application/json; charset=utf-8");
    }

    private async Task<IResult> BlankAsync(string id, HttpContext http, CancellationToken cancel)
    {
        if (!CaseId.IsWellFormed(id) || await desk.BlankAsync(id, cancel) is null)
            return Refusal.Because(StatusCodes.Status404NotFound, CaseEndpoints.UnknownCase);
        Note(http, "removed words of case", id);
        return Results.NoContent();
    }

    private async Task<Found?> FoundAsync(string id, CancellationToken cancel)
    {
        var log = await store.ReadAsync(id, cancel);
        if (log.IsEmpty) return null;
        var head = CaseSheet.Of(id, log, inUse().Titles).Head;
        return new Found(id, head.Shows, head.Unit, log[^1].At);
    }

    // Who was looked for is not written down: the line would keep the name that is to be removed.
    private void Note(HttpContext http, string did, string id)
    {
        if (book.HasAccounts) book.Note(Clerks.PersonOf(http).Name, did, id);
    }

    private static bool IsTooShort(string? about) => (about?.Trim().Length ?? 0) < 3;

    /// <summary>A case that speaks of somebody.</summary>
    internal sealed record Found(string Id, string? Shows, string? Unit, DateTimeOffset LastAt);
}
