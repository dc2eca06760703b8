using System.Collections.Immutable;

namespace DxAssistant.Server.Channels;

/// <summary>Where replies may be posted: this machine, and the addresses that were named at the start.</summary>
/// <remarks>The caller of the bot's front chooses the address; without a list it could make this program post
/// anywhere.</remarks>
internal sealed class ServiceUrlList(ImmutableArray<Uri> named)
{
    public bool Allows(string? serviceUrl)
    {
        if (Read(serviceUrl) is not { } url) return false;
        return url.IsLoopback || named.Any(n => Uri.Compare(
            n, url, UriComponents.SchemeAndServer, UriFormat.UriEscaped, StringComparison.OrdinalIgnoreCase) == 0);
    }

    /// <summary>An absolute http or https address; null when the text is none.</summary>
    public static Uri? Read(string? serviceUrl) =>
        Uri.TryCreate(serviceUrl, UriKind.Absolute, out var url)
            && (url.Scheme == Uri.UriSchemeHttp || url.Scheme == Uri.UriSchemeHttps)
            ? url : null;
}
