namespace DxAssistant.Server.Serving;

/// <summary>
/// Tells the browser to run nothing but the program's own files, and to come by HTTPS alone once it did.
/// </summary>
/// <remarks>Sources: W3C Content Security Policy Level 3; RFC 6797 (HSTS), 6.1; OWASP ASVS 5.0, 3.4.</remarks>
internal sealed class SafeHeaders(RequestDelegate next)
{
    private const string Policy =
        "default-src 'none'; object-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; img-src "
            + "'self'; connect-src 'self'; font-src 'self'; " +
        "manifest-src 'self'; worker-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

    private const string OneYear = "max-age=31536000; includeSubDomains";

    public Task InvokeAsync(HttpContext context)
    {
        var headers = context.Response.Headers;
        headers.ContentSecurityPolicy = Policy;
        headers.XContentTypeOptions = "nosniff";
        headers["Referrer-Policy"] = "no-referrer";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        headers.XFrameOptions = "DENY"; // for browsers that do not know frame-ancestors
        if (IsReachedSafely(context.Request)) headers.StrictTransportSecurity = OneYear;

        // Pages are asked for anew each time and answered "unchanged"; cases are never kept by the browser.
        headers.CacheControl = context.Request.Path.StartsWithSegments("/api", StringComparison.OrdinalIgnoreCase)
            ? "no-store" : "no-cache";
        return next(context);
    }

    // This machine's own name is everybody's: other programs on it may not have a certificate.
    private static bool IsReachedSafely(HttpRequest request) =>
        request.IsHttps && request.Host.Host is not ("localhost" or "127.0.0.1" or "[::1]");
}
