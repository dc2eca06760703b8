using DxAssistant.Server.Chat;
using DxAssistant.Server.Serving;

namespace DxAssistant.Server.Offline;

/// <summary>Hands out what a browser keeps to work without signal: the engine and the pack of pages.</summary>
/// <remarks>Both lie below their version, so that what is kept never changes under its name.</remarks>
internal sealed class OfflineEndpoints(Func<InUse> inUse, PageShelf shelf)
{
    private const string Forever = "public, max-age=31536000, immutable";
    private const string Gone = "That version is not here any more. Load the page anew.";

    private readonly Lazy<EngineFolder?> engine = new(EngineFolder.Find);

    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/offline/kit", () => Results.Json(Kit(), ChatJson.Options));
        routes.MapGet("/offline/engine/{version}/{name}", EngineFile);
        routes.MapGet("/offline/pages/{version}/pack", Pack);
    }

    private OfflineKit Kit()
    {
        var now = inUse();
        return new OfflineKit(
            engine.Value is { } found
                ? new OfflineKit.Part(found.Version, $"/offline/engine/{found.Version}/", found.Files, found.Bytes)
                : null,
            now.Packed is { } packed
                ? new OfflineKit.Part(now.Version, $"/offline/pages/{now.Version}/", ["pack"], packed.Brotli.Length)
                : null);
    }

    private IResult EngineFile(string version, string name, HttpContext context)
    {
        bool brotli = TakesBrotli(context.Request);
        if (engine.Value is not { } found || found.Version != version || found.Locate(name, brotli) is not { } file)
            return Refusal.Because(StatusCodes.Status404NotFound, Gone);
        Keep(context.Response, file.IsBrotli);
        return Results.File(file.Path, TypeOf(name));
    }

    private IResult Pack(string version, HttpContext context)
    {
        var now = inUse();
        if (now.Version != version || now.Packed is not { } packed)
            return Refusal.Because(StatusCodes.Status404NotFound, Gone);
        if (!TakesBrotli(context.Request))
            return Refusal.Because(StatusCodes.Status406NotAcceptable, "Ask for it with Accept-Encoding: br.");
        shelf.Keep(now);
        Keep(context.Response, isBrotli: true);
        return Results.Bytes(packed.Brotli, "application/octet-stream");
    }

    private static bool TakesBrotli(HttpRequest request) =>
        request.Headers.AcceptEncoding.ToString().Split(',').Any(one => one.Trim() == "br");

    private static void Keep(HttpResponse response, bool isBrotli)
    {
        response.Headers.CacheControl = Forever;
        response.Headers.Vary = "Accept-Encoding";
        if (isBrotli) response.Headers.ContentEncoding = "br";
    }

    private static string TypeOf(string name) => Path.GetExtension(name) switch
    {
        ".js" => "text/javascript",
        ".wasm" => "application/wasm",
        ".json" => "application/json",
        _ => "application/octet-stream",
    };
}
