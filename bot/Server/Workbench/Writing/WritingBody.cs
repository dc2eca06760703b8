using System.Text.Json;
using DxAssistant.Server.Chat;
using Microsoft.AspNetCore.Http.Features;

namespace DxAssistant.Server.Workbench.Writing;

/// <summary>Reads what the writing screens send, up to a size.</summary>
internal static class WritingBody
{
    /// <summary>Bytes of a request, at most.</summary>
    public const long MostBytes = 3_000_000;

    /// <returns>Null when it cannot be read.</returns>
    /// <exception cref="BadHttpRequestException">It is larger than allowed.</exception>
    public static async Task<T?> ReadAsync<T>(HttpRequest request, CancellationToken cancel) where T : class
    {
        if (request.ContentLength > MostBytes) throw TooLarge();
        if (request.HttpContext.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } size)
            size.MaxRequestBodySize = MostBytes;
        try
        {
            return await JsonSerializer.DeserializeAsync<T>(request.Body, ChatJson.Options, cancel);
        }
        catch (JsonException)
        {
            return null;
        }
    }

    private static BadHttpRequestException TooLarge() => new("too large", StatusCodes.Status413PayloadTooLarge);
}
