using System.ComponentModel;
using System.Text;
using DxAssistant.Knowledge.Content;
using DxAssistant.Server.Api;
using DxAssistant.Server.Chat;
using DxAssistant.Server.Serving;

namespace DxAssistant.Server.Content;

/// <summary>The pages that answer now, to read.</summary>
internal sealed class ContentEndpoints(Func<InUse> inUse)
{
    private const string Part = "Content";
    private const string NoPages = "This server answers without pages.";
    private const string NoPage = "There is no such page in the version that answers now. Look in the list of pages.";

    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/api/content", Show)
            .Says<ContentView>(Part, "Says which version of the pages answers now, and how many there are.").IsTagged()
            .Refuses(404);
        routes.MapGet("/api/content/pages", List)
            .Says<PageLine[]>(Part, "Lists the pages by their paths.").Refuses(400, 404);
        routes.MapGet("/api/content/pages/{**path}", Page)
            .Says<string>(Part, "Gives a page as it was written.", type: "text/markdown").IsTagged().Refuses(404);
    }

    private IResult Show() => inUse() is { Packed.Folder: { } folder } now
        ? Tagged.Json(new ContentView(now.Version, folder.Pages.Length, folder.Pictures.Length))
        : Refusal.Because(404, NoPages);

    private IResult List(
        [Description("How many a page of the list holds at most, 1 to 1000; 100 if left out.")] int? limit,
        [Description("The path after which the list goes on.")] string? after, HttpContext http)
    {
        if (Paging.Read(limit) is not { } most) return Paging.BadLimit();
        if (inUse().Packed?.Folder is not { } folder) return Refusal.Because(404, NoPages);
        var later = folder.Pages.Where(page => string.CompareOrdinal(page.Path, after ?? "") > 0).Take(most + 1)
            .ToList();
        Paging.Next(http, "after", later.Count > most ? later[most - 1].Path : null);
        return Results.Json(later.Take(most)
            .Select(page => new PageLine(page.Path, PageTitle.Of(page))), ChatJson.Options);
    }

    private IResult Page(string path) => inUse().Packed?.Folder.File(path) is ContentFile { IsPicture: false } page
        ? Tagged.Of(Encoding.UTF8.GetBytes(page.Text), "text/markdown; charset=utf-8") : Refusal.Because(404, NoPage);
}
