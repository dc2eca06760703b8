using System.Text.Json;
using DxAssistant.Server.Chat;
using Microsoft.AspNetCore.Http.Features;

namespace DxAssistant.Server.Accounts;

/// <summary>Reads a small JSON body, or says what is wrong with it.</summary>
internal static class SmallJson
{
    private const int MostBytes = 16 * 1024;

    public static async Task<(T? Body, IResult? Refusal)> ReadAsync<T>(HttpRequest request, CancellationToken cancel)
        where T : class
    {
        if (!request.HasJsonContentType())
            return (null, Refusal.Because(StatusCodes.Status415UnsupportedMediaType, "Send it as application/json."));
        if (request.HttpContext.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } size)
            size.MaxRequestBodySize = MostBytes;
        try
        {
            var body = await JsonSerializer.DeserializeAsync<T>(request.Body, ChatJson.Options, cancel);
            return body is null ? (null, NotJson()) : (body, null);
        }
        catch (JsonException)
        {
            return (null, NotJson());
        }
    }

    private static IResult NotJson() =>
        Refusal.Because(StatusCodes.Status400BadRequest, "That was not the JSON this takes.");
}
