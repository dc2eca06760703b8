using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using DxAssistant.Server.Accounts;
using DxAssistant.Server.Api;
using DxAssistant.Server.Chat;
using DxAssistant.Server.Desk;

namespace DxAssistant.Server.Workbench.Writing;

/// <summary>Proposals over HTTP: hand in, list, show, take back, the file for whoever reviews them.</summary>
internal sealed class ProposalEndpoints(PageDesk pages, ProposalDesk desk, RequestKeys keys)
{
    private const int Listed = 200;
    private const string Form =
        "Send {\"note\",\"pages\":[{\"path\",\"text\",\"base\"}]}, with \"gone\":true in place of the text to take a "
            + "page out.";

    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/api/proposals", ListAsync);
        routes.MapPost("/api/proposals", HandInAsync);
        routes.MapGet("/api/proposals/{number:int}",
            (int number, HttpContext http, CancellationToken cancel) => ShowAsync(number, http, cancel));
        routes.MapGet("/api/proposals/{number:int}/patch", Patch);
        routes.MapDelete("/api/proposals/{number:int}", TakeBackAsync);
    }

    private async Task<IResult> ListAsync(HttpContext http, CancellationToken cancel)
    {
        if (!pages.IsOpen) return PageEndpoints.Closed();
        var folder = (await pages.StandsAsync(cancel)).Folder;
        return PageEndpoints.Json(
            new JsonArray([.. desk.All().Take(Listed)
                .Select(each => (JsonNode)WritingJson.Of(each, folder, Clerks.PersonOf(http)))]));
    }

    private async Task<IResult> HandInAsync(HttpContext http, CancellationToken cancel)
    {
        if (!pages.IsOpen) return PageEndpoints.Closed();
        if (await WritingBody.ReadAsync<PagesRequest>(http.Request, cancel) is not { Note: { } note, Pages: { } sent }
            || sent.Any(page => page is not { IsWhole: true, Base: not null }))
            return Refusal.Because(StatusCodes.Status400BadRequest, Form);
        var person = Clerks.PersonOf(http);
        PageInHand[] written =
            [.. sent.Select(page => page! with { Text = page.Text is { } text ? OneEnd(text) : null })];
        string asked = JsonSerializer.Serialize(new { note, sent });
        var (mark, _, refusal) =
            await keys.TakeAsync(http, $"hand in {RequestKeys.Short(asked)}", Guid.NewGuid().ToString("N"), cancel);
        if (refusal is not null) return refusal;
        return await desk.HandInAsync(person, OneEnd(note), written, mark, cancel) switch
        {
            HandedIn.Kept kept =>
                Results.Json(new { kept.Proposal.Number }, ChatJson.Options, statusCode: StatusCodes.Status201Created),
            HandedIn.Overtaken overtaken => Results.Json(
                new { Error = "The page changed since you began: see what changed, then hand it in again.",
                    Missing = overtaken.Paths },
                ChatJson.Options, statusCode: StatusCodes.Status409Conflict),
            HandedIn.Refused refused => refused.Result,
            _ => throw new InvalidOperationException(),
        };
    }

    private async Task<IResult> ShowAsync(int number, HttpContext http, CancellationToken cancel)
    {
        if (!pages.IsOpen) return PageEndpoints.Closed();
        var folder = (await pages.StandsAsync(cancel)).Folder;
        return desk.Find(number) is { } proposal
            ? PageEndpoints.Json(WritingJson.Whole(proposal, folder, Clerks.PersonOf(http)))
            : Unknown();
    }

    private IResult Patch(int number, HttpContext http)
    {
        if (!pages.IsOpen) return PageEndpoints.Closed();
        if (desk.Find(number) is not { } proposal) return Unknown();
        http.Response.Headers.ContentDisposition = $"attachment; filename=\"proposal-{proposal.Number}.patch\"";
        return Results.Text(desk.Patch(proposal), "text/plain", Encoding.UTF8);
    }

    private async Task<IResult> TakeBackAsync(int number, HttpContext http, CancellationToken cancel)
    {
        if (!pages.IsOpen) return PageEndpoints.Closed();
        if (desk.Find(number) is not { } proposal) return Unknown();
        if (!ProposalDesk.MayTakeBack(Clerks.PersonOf(http), proposal))
            return Refusal.Because(StatusCodes.Status403Forbidden,
                "Only who handed a proposal in, or whoever keeps the accounts, takes it back.");
        desk.TakeBack(Clerks.PersonOf(http), proposal);
        return await ShowAsync(number, http, cancel);
    }

    private static string OneEnd(string text) =>
        text.Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n');

    private static IResult Unknown() =>
        Refusal.Because(StatusCodes.Status404NotFound, "There is no proposal of that number.");
}
