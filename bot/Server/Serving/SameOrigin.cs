using DxAssistant.Server.Chat;

namespace DxAssistant.Server.Serving;

/// <summary>Turns away requests that a page of another site makes a browser send, wherever they would change
/// something.</summary>
/// <remarks>Sources, from memory: RFC 6454 (Origin); W3C Fetch Metadata Request Headers (Sec-Fetch-Site), which also
/// holds behind a proxy that asks under another name. Programs that are no browsers send neither.</remarks>
internal sealed class SameOrigin(RequestDelegate next)
{
    public Task InvokeAsync(HttpContext context) => Changes(context.Request.Method) && IsFromElsewhere(context.Request)
        ? Refusal.Because(StatusCodes.Status403Forbidden, "Only the pages of this program may do that.")
            .ExecuteAsync(context)
        : next(context);

    private static bool Changes(string method) =>
        !HttpMethods.IsGet(method) && !HttpMethods.IsHead(method) && !HttpMethods.IsOptions(method);

    private static bool IsFromElsewhere(HttpRequest request)
    {
        string site = request.Headers["Sec-Fetch-Site"].ToString();
        if (site.Length > 0) return site is not ("same-origin" or "none");
        string origin = request.Headers.Origin.ToString();
        return origin.Length > 0
            && !string.Equals(origin, $"{request.Scheme}://{request.Host}", StringComparison.OrdinalIgnoreCase);
    }
}
