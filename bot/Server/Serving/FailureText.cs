using DxAssistant.Server.Channels;

namespace DxAssistant.Server.Serving;

/// <summary>What is said when the program itself failed: what it means for what was asked, and what can be
/// done.</summary>
internal static class FailureText
{
    /// <summary>For a fault of the program.</summary>
    /// <remarks>Never that nothing was kept: a turn may be on disk before what follows it fails.</remarks>
    public static string Of(HttpRequest request)
    {
        if (Reads(request)) return "That could not be shown; nothing was changed. Load the page again.";
        if (request.Path.StartsWithSegments(BotFront.Path, StringComparison.OrdinalIgnoreCase))
            return "the activity could not be answered; sent again under the same id it is not taken twice";
        return request.Path.Value?.EndsWith("/turns", StringComparison.OrdinalIgnoreCase) == true
            ? "That answer could not be worked out. What was saved before is still there: "
                + "say it in other words, or go back one step."
            : "The sheet could not be opened. Try once more.";
    }

    /// <summary>For a fault of the file of cases.</summary>
    public static string Of(HttpRequest request, string fault) =>
        Reads(request) ? $"Cannot be shown: {fault}" : $"Not saved: {fault}";

    private static bool Reads(HttpRequest request) =>
        HttpMethods.IsGet(request.Method) || HttpMethods.IsHead(request.Method);
}
