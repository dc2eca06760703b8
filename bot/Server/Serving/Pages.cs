using System.IO.Compression;
using Microsoft.AspNetCore.ResponseCompression;
using Microsoft.Extensions.FileProviders;

namespace DxAssistant.Server.Serving;

/// <summary>The pages of the web chat, from the folder beside the program.</summary>
internal static class Pages
{
    private const string Html = "text/html; charset=utf-8";

    private static readonly string Folder = Path.Combine(AppContext.BaseDirectory, "wwwroot");

    /// <summary>Packs the files of the pages on their way.</summary>
    // They hold nothing secret, so that packing them gives nothing away over HTTPS; answers about cases are not packed.
    public static void AddTo(IServiceCollection services)
    {
        services.AddResponseCompression(packing =>
        {
            packing.EnableForHttps = true;
            packing.MimeTypes =
                [.. ResponseCompressionDefaults.MimeTypes, "image/svg+xml", "application/manifest+json"];
        });
        services.Configure<BrotliCompressionProviderOptions>(brotli => brotli.Level = CompressionLevel.Optimal);
        services.Configure<GzipCompressionProviderOptions>(gzip => gzip.Level = CompressionLevel.Optimal);
    }

    /// <summary>What every page is made of; nothing of any case, so nobody is asked who they are.</summary>
    public static void MapFiles(WebApplication app)
    {
        app.UseWhen(context => IsOfPages(context.Request.Path), pages => pages.UseResponseCompression());
        app.UseStaticFiles(new StaticFileOptions { FileProvider = new PhysicalFileProvider(Folder) });
    }

    // Engine and packs of pages are packed already.
    private static bool IsOfPages(PathString path) => !path.StartsWithSegments("/api", StringComparison.Ordinal)
        && !path.StartsWithSegments("/offline", StringComparison.Ordinal);

    /// <summary>The pages by their addresses.</summary>
    public static void Map(WebApplication app)
    {
        app.MapGet("/", () => Page("case.html"));
        app.MapGet("/case/{id}", (string id) => Page("case.html"));
        app.MapGet("/case/{id}/sheet", (string id) => Page("sheet.html"));
        app.MapGet("/claim/{id}", (string id) => Page("claim.html"));
        app.MapGet("/claims", () => Page("claims.html"));
        app.MapGet("/case/{id}/call", (string id) => Page("call.html"));
        app.MapGet("/join", () => Page("join.html"));
        app.MapGet("/case/{id}/job", (string id) => Page("job.html"));
        app.MapGet("/work", () => Page("work.html"));
        app.MapGet("/cases", () => Page("cases.html"));
        app.MapGet("/pages", () => Page("pages.html"));
        app.MapGet("/pages/write/{**path}", () => Page("write.html"));
        app.MapGet("/proposals", () => Page("proposals.html"));
        app.MapGet("/proposals/{number:int}", () => Page("proposal.html"));
        app.MapGet("/privacy", () => Page("privacy.html"));
        app.MapGet("/device", () => Page("device.html"));
        app.MapGet("/sign-in", () => Page("sign-in.html"));
        app.MapGet("/sign-in/password", () => Page("password.html"));
        app.MapGet("/accounts", () => Page("accounts.html"));
    }

    /// <summary>What people see who may not open a page.</summary>
    public static Task RefuseAsync(HttpContext http)
    {
        (http.Response.StatusCode, http.Response.ContentType) = (StatusCodes.Status403Forbidden, Html);
        return http.Response.SendFileAsync(Path.Combine(Folder, "refused.html"), http.RequestAborted);
    }

    private static IResult Page(string name) => Results.File(Path.Combine(Folder, name), Html);
}
