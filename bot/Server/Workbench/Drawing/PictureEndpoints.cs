using System.Text.Json.Nodes;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Pictures;
using DxAssistant.Knowledge.Pictures.Plans;
using DxAssistant.Server.Chat;
using DxAssistant.Server.Commands;
using DxAssistant.Server.Commands.Asking;

namespace DxAssistant.Server.Workbench.Drawing;

/// <summary>Pictures of the pages for a browser.</summary>
/// <param name="library">The library of now; null when the pages have never been right.</param>
internal sealed class PictureEndpoints(Func<Library?> library)
{
    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/api/preview/picture",
            (string kind, string? series, string? symptom, int? checks, string? language) =>
            Answer(new PictureAsked(kind, series, symptom, checks, language), Shown));
        routes.MapGet("/api/preview/picture.svg",
            (string kind, string? series, string? symptom, int? checks, string? language) =>
            Answer(new PictureAsked(kind, series, symptom, checks, language), Kept));
    }

    private IResult Answer(PictureAsked asked, Func<PictureAsked, Planned, IResult> form)
    {
        if (library() is not { } now)
            return Refusal.Because(StatusCodes.Status409Conflict,
                "Nothing can be drawn before the pages are free of errors.");
        try
        {
            return form(asked, LibraryPictures.Of(now, asked));
        }
        catch (ArgumentException error)
        {
            return Refusal.Because(StatusCodes.Status400BadRequest, error.Message);
        }
    }

    private static IResult Shown(PictureAsked asked, Planned drawn) => Results.Text(new JsonObject
    {
        ["svg"] = drawn.Svg,
        ["page"] = drawn.IsPage,
        ["lines"] = new JsonArray(
            [.. drawn.Lines.Select(line => (JsonNode)new JsonObject { ["depth"] = line.Depth, ["text"] = line.Text })]),
    }.ToJsonString(JsonLines.Plain), "application/json; charset=utf-8");

    private static IResult Kept(PictureAsked asked, Planned drawn) => Results.File(
        System.Text.Encoding.UTF8.GetBytes(PlannedFile.Of(drawn, "")), "image/svg+xml", PlannedFile.NameOf(asked));
}
