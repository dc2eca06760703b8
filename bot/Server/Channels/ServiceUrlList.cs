using System.Collections.Immutable;

namespace DxAssistant.Server.Channels;

/// <summary>Where replies may be posted: this machine, and the addresses that were named at the start.</summary>
/// <remarks>The caller of the bot's front chooses the address; without a list it could make this program post
/// anywhere.</remarks>
internal sealed class ServiceUrlList(ImmutableArray<Uri> named)
{
    public bool Allows(string? serviceUrl)
    {
        if (!Uri.TryCreate(serviceUrl, UriKind.Absolute, out var url)) return false;
        if (url.Scheme != Uri.UriSchemeHttp && url.Scheme != Uri.UriSchemeHttps) return false;
        return url.IsLoopback || named.Any(n => Uri.Compare(
            n, url, UriComponents.SchemeAndServer, UriFormat.UriEscaped, StringComparison.OrdinalIgnoreCase) == 0);
    }
}
