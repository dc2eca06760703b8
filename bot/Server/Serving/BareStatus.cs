using DxAssistant.Server.Chat;
using Microsoft.AspNetCore.Diagnostics;

namespace DxAssistant.Server.Serving;

/// <summary>Says a line where only a status would have been answered.</summary>
internal static class BareStatus
{
    public static void Map(WebApplication app) =>
        app.UseStatusCodePages((StatusCodeContext bare) => SayAsync(bare.HttpContext));

    private static Task SayAsync(HttpContext http)
    {
        string line = LineOf(http.Response.StatusCode);
        return http.Request.Path.StartsWithSegments("/api", StringComparison.OrdinalIgnoreCase)
            ? Refusal.Because(http.Response.StatusCode, line).ExecuteAsync(http)
            : http.Response.WriteAsync(line);
    }

    private static string LineOf(int status) => status switch
    {
        StatusCodes.Status400BadRequest => "The request could not be read: look at its address and its query.",
        StatusCodes.Status401Unauthorized => "Say who you are first.",
        StatusCodes.Status404NotFound => "There is nothing at this address.",
        StatusCodes.Status405MethodNotAllowed => "That cannot be done at this address.",
        StatusCodes.Status415UnsupportedMediaType => "Send it as application/json.",
        _ => FormattableString.Invariant($"The request was not carried out (status {status})."),
    };
}
