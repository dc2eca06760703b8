using System.Net;
using System.Net.ServerSentEvents;
using System.Runtime.CompilerServices;
using DxAssistant.Server.Chat;
using DxAssistant.Server.Commands;
using DxAssistant.Server.Commands.Asking;
using DxAssistant.Server.Serving;
using Microsoft.AspNetCore.HostFiltering;
using Microsoft.Extensions.FileProviders;

namespace DxAssistant.Server.Workbench.Preview;

/// <summary>Serves the pages to their author, on this machine only.</summary>
internal static class PreviewServer
{
    private static readonly string Folder = Path.Combine(AppContext.BaseDirectory, "wwwroot");

    /// <param name="port">0 takes any free one.</param>
    public static WebApplication Build(PreviewPages pages, int port)
    {
        var builder =
            WebApplication.CreateSlimBuilder(new WebApplicationOptions { ContentRootPath = AppContext.BaseDirectory });
        builder.Logging.SetMinimumLevel(LogLevel.Warning);
        builder.Logging.AddFilter("Microsoft.Extensions.Hosting.Internal.Host", LogLevel.None);
        builder.WebHost.ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Listen(IPAddress.Loopback, port);
        });
        builder.Services.Configure<HostFilteringOptions>(options => options.AllowedHosts = ["localhost", "127.0.0.1"]);
        return Map(builder.Build(), pages);
    }

    private static WebApplication Map(WebApplication app, PreviewPages pages)
    {
        app.UseHostFiltering();
        app.UseMiddleware<SafeHeaders>();
        app.UseMiddleware<SameOrigin>();
        app.UseStaticFiles(new StaticFileOptions { FileProvider = new PhysicalFileProvider(Folder) });
        app.MapGet("/", () => Results.File(Path.Combine(Folder, "preview.html"), "text/html; charset=utf-8"));
        app.MapGet("/api/preview/pages", () => Json(pages.All()));
        app.MapGet("/api/preview/page", (string path) => pages.One(path) is { } page ? Json(page) : Results.NotFound());
        app.MapGet("/pictures/{name}", (string name) =>
            pages.Current.Folder.File($"pictures/{name}") is { IsPicture: true } picture
                ? Results.Text(picture.Text, "image/svg+xml") : Results.NotFound());
        new Drawing.PictureEndpoints(() => pages.Current.LastGood).Map(app);
        app.MapPost("/api/preview/walk", (WalkAsked asked) => Walk(pages, asked));
        app.MapGet("/api/preview/changes", (CancellationToken cancel) =>
            TypedResults.ServerSentEvents(Changes(pages, cancel)));
        return app;
    }

    private static IResult Walk(PreviewPages pages, WalkAsked asked)
    {
        if (pages.Current.LastGood is not { } library)
            return Refusal.Because(StatusCodes.Status409Conflict,
                "Nothing can be walked before the pages are free of errors.");
        try
        {
            return Json(WalkPreview.Of(library, asked));
        }
        catch (ArgumentException error)
        {
            return Refusal.Because(StatusCodes.Status400BadRequest, error.Message);
        }
    }

    private static async IAsyncEnumerable<SseItem<int>> Changes(PreviewPages pages,
        [EnumeratorCancellation] CancellationToken cancel)
    {
        while (true)
        {
            // Taken before the number: a change in between is told at once.
            Task next = pages.Changed;
            yield return new SseItem<int>(pages.Current.Number, "pages");
            await next.WaitAsync(cancel);
        }
    }

    private static IResult Json(System.Text.Json.Nodes.JsonNode node) =>
        Results.Text(node.ToJsonString(JsonLines.Plain), "application/json; charset=utf-8");
}
