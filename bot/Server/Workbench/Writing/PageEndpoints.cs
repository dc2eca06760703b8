using System.Collections.Immutable;
using System.Text.Json.Nodes;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Editing;
using DxAssistant.Server.Chat;
using DxAssistant.Server.Commands;
using DxAssistant.Server.Commands.Asking;
using DxAssistant.Server.Workbench.Preview;

namespace DxAssistant.Server.Workbench.Writing;

/// <summary>
/// Pages over HTTP for who writes them: list, text, what is wrong, how it looks, walks. Nothing here changes anything.
/// </summary>
internal sealed class PageEndpoints(PageDesk desk)
{
    private const string Form =
        "Send {\"pages\":[{\"path\",\"text\"}], \"show\":path}, with \"gone\":true in place of the text of a page that "
            + "is taken out.";

    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/api/pages", ListAsync);
        routes.MapGet("/api/pages/text", TextAsync);
        routes.MapGet("/api/pages/pictures/{name}", PictureAsync);
        routes.MapPost("/api/pages/proof", ProofAsync);
        routes.MapPost("/api/pages/walk", WalkAsync);
        routes.MapPost("/api/pages/changes", ChangesAsync);
        routes.MapPost("/api/pages/merge", MergeAsync);
        routes.MapPost("/api/pages/rename", RenameAsync);
    }

    /// <summary>Said where the server has no folder of pages.</summary>
    public static IResult Closed() =>
        Refusal.Because(StatusCodes.Status404NotFound, "This server has no folder of pages to write in.");

    private async Task<IResult> ListAsync(CancellationToken cancel)
    {
        if (!desk.IsOpen) return Closed();
        PageDesk.Tried now = await desk.StandsAsync(cancel);
        ILookup<string, Diagnostic> found =
            now.Result.Diagnostics.ToLookup(each => each.At.Path, StringComparer.Ordinal);
        return Json(new JsonObject
        {
            ["pages"] = new JsonArray([.. now.Folder.Pages.Select(page => (JsonNode)new JsonObject
            {
                ["path"] = page.Path, ["title"] = PageTitle.Of(page), ["wrong"] = found[page.Path].Count(),
            })]),
        });
    }

    private async Task<IResult> TextAsync(string path, CancellationToken cancel)
    {
        if (!desk.IsOpen) return Closed();
        ContentFolder folder = (await desk.StandsAsync(cancel)).Folder;
        if (PageRules.ProblemWithPath(path, folder) is { } problem)
            return Refusal.Because(StatusCodes.Status404NotFound, problem);
        string? text = folder.File(path)?.Text;
        return Json(new JsonObject { ["path"] = path, ["text"] = text, ["base"] = PageMark.Of(text) });
    }

    private async Task<IResult> PictureAsync(string name, CancellationToken cancel) =>
        desk.IsOpen && (await desk.StandsAsync(cancel)).Folder.File($"pictures/{name}") is { IsPicture: true } picture
            ? Results.Text(picture.Text, "image/svg+xml") : Results.NotFound();

    private async Task<IResult> ProofAsync(HttpRequest request, CancellationToken cancel)
    {
        (PagesRequest? asked, PageDesk.Tried? tried, IResult? refusal) = await TryAsync(request, cancel);
        if (tried is null) return refusal!;
        string[] written = [.. asked!.Pages!.Select(page => page!.Path)];
        ImmutableArray<Diagnostic> found = tried.Found(written);
        return Json(new JsonObject
        {
            ["html"] = asked.Show is { } show && tried.Folder.File(show) is { IsPicture: false } page
                ? PageHtml.Of(page.Text)
                : null,
            ["found"] = new JsonArray([.. found.Take(200)
                .Select(each => (JsonNode)WritingJson.Of(each, tried.Folder.File(each.At.Path)?.Text))]),
            ["errors"] = found.Count(each => each.Severity == Severity.Error),
            ["warnings"] = found.Count(each => each.Severity == Severity.Warning),
            ["walks"] = WalkChoices.Of(tried.Result.Library),
        });
    }

    private async Task<IResult> WalkAsync(HttpRequest request, CancellationToken cancel)
    {
        (PagesRequest? asked, PageDesk.Tried? tried, IResult? refusal) = await TryAsync(request, cancel);
        if (tried is null) return refusal!;
        if (asked!.Walk is not { } walk) return Refusal.Because(StatusCodes.Status400BadRequest, Form);
        if (tried.Result.Library is not { } library)
            return Refusal.Because(StatusCodes.Status409Conflict,
                "Nothing can be walked before the pages are free of errors.");
        try
        {
            return Json(WalkPreview.Of(library, walk));
        }
        catch (ArgumentException error)
        {
            return Refusal.Because(StatusCodes.Status400BadRequest, error.Message);
        }
    }

    // What has to be written and taken out so that a page has another id, upon the pages in hand.
    private async Task<IResult> RenameAsync(HttpRequest request, CancellationToken cancel)
    {
        (PagesRequest? asked, PageDesk.Tried? tried, IResult? refusal) = await TryAsync(request, cancel);
        if (tried is null) return refusal!;
        if (asked!.Show is not { } path || asked.Id is not { } id)
            return Refusal.Because(StatusCodes.Status400BadRequest,
                "Send {\"pages\", \"show\":path, \"id\":the new id}.");
        ImmutableArray<(string Path, string? Text)> changed =
            RenamedPages.Of(tried.Folder, path, id, out string? problem);
        int together = changed.Select(page => page.Path).Union(asked.Pages!.Select(page => page!.Path)).Count();
        problem ??= together > ProposalDesk.MostPages
            ? $"{together} pages would be in hand with it, and a proposal has {ProposalDesk.MostPages} at most: ask who reviews to give it another id."
            : null;
        if (problem is not null) return Refusal.Because(StatusCodes.Status400BadRequest, problem);
        ContentFolder stands = (await desk.StandsAsync(cancel)).Folder;
        return Json(new JsonObject
        {
            ["pages"] = new JsonArray([.. changed.Select(page => (JsonNode)new JsonObject
            {
                ["path"] = page.Path, ["text"] = page.Text,
                ["before"] = stands.File(page.Path)?.Text, ["base"] = PageMark.Of(stands.File(page.Path)?.Text),
            })]),
        });
    }

    private static async Task<IResult> ChangesAsync(HttpRequest request, CancellationToken cancel) =>
        await WritingBody.ReadAsync<ChangesRequest>(request,
            cancel) is { Before: { Length: <= PageRules.MostCharacters } before,
                After: { Length: <= PageRules.MostCharacters } after }
            ? Json(new JsonObject { ["changes"] = WritingJson.Changes(before, after) })
            : Refusal.Because(StatusCodes.Status400BadRequest,
                "Send {\"before\",\"after\"}, each no longer than a page may be.");

    private static async Task<IResult> MergeAsync(HttpRequest request, CancellationToken cancel) =>
        await WritingBody.ReadAsync<MergeRequest>(request,
            cancel) is { Before: { Length: <= PageRules.MostCharacters } before,
                Mine: { Length: <= PageRules.MostCharacters } mine,
                Theirs: { Length: <= PageRules.MostCharacters } theirs }
            ? Json(new JsonObject { ["text"] = ThreeTexts.Merge(before, mine, theirs) })
            : Refusal.Because(StatusCodes.Status400BadRequest,
                "Send {\"before\",\"mine\",\"theirs\"}, each no longer than a page may be.");

    private async Task<(PagesRequest? Asked, PageDesk.Tried? Tried, IResult? Refusal)> TryAsync(HttpRequest request,
        CancellationToken cancel)
    {
        if (!desk.IsOpen) return (null, null, Closed());
        var asked = await WritingBody.ReadAsync<PagesRequest>(request, cancel);
        if (asked?.Pages is not { Length: > 0 and <= ProposalDesk.MostPages } pages
            || pages.Any(page => page is not { IsWhole: true }))
            return (null, null, Refusal.Because(StatusCodes.Status400BadRequest, Form));
        ContentFolder folder = (await desk.StandsAsync(cancel)).Folder;
        string? problem = pages.Select(page => PageRules.ProblemWithPath(page!.Path, folder)
            ?? (page.Text is { } text ? PageRules.ProblemWithSize(text) : null))
            .FirstOrDefault(each => each is not null);
        problem ??= pages.Select(page => page!.Path).Distinct(StringComparer.Ordinal).Count() < pages.Length
            ? "One page is there twice."
            : null;
        return problem is not null
            ? (null, null, Refusal.Because(StatusCodes.Status400BadRequest, problem))
            : (asked, await desk.TryAsync([.. pages!], cancel), null);
    }

    internal static IResult Json(JsonNode node) =>
        Results.Text(node.ToJsonString(JsonLines.Plain), "application/json; charset=utf-8");
}
