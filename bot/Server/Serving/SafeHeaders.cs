namespace DxAssistant.Server.Serving;

/// <summary>Tells the browser to run nothing but the program's own files.</summary>
internal sealed class SafeHeaders(RequestDelegate next)
{
    private const string Policy =
        "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; img-src 'self'; connect-src 'self'; font-src 'self'; " +
        "manifest-src 'self'; worker-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

    public Task InvokeAsync(HttpContext context)
    {
        var headers = context.Response.Headers;
        headers.ContentSecurityPolicy = Policy;
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "no-referrer";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";

        // Pages are asked for anew each time and answered "unchanged"; cases are never kept by the browser.
        headers.CacheControl = context.Request.Path.StartsWithSegments("/api", StringComparison.Ordinal)
            ? "no-store" : "no-cache";
        return next(context);
    }
}
