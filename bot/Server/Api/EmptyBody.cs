using System.Text.Json;
using DxAssistant.Server.Chat;

namespace DxAssistant.Server.Api;

/// <summary>A request that says all in its address.</summary>
internal static class EmptyBody
{
    private const int MostBytes = 64;

    /// <summary>Why a body is refused; null when there is none, or it is <c>{}</c>.</summary>
    public static async Task<IResult?> RefuseAsync(HttpRequest request, CancellationToken cancel)
    {
        byte[] read = new byte[MostBytes + 1];
        int length = await request.Body.ReadAtLeastAsync(read, read.Length, throwOnEndOfStream: false, cancel);
        return length <= MostBytes && SaysNothing(read.AsMemory(0, length)) ? null : Refusal.Because(
            StatusCodes.Status400BadRequest,
            "This takes no body: send none, or {}. What is said in a case goes to its turns.");
    }

    private static bool SaysNothing(ReadOnlyMemory<byte> body)
    {
        if (body.Span.Trim(" \t\r\n"u8).IsEmpty) return true;
        try
        {
            using var json = JsonDocument.Parse(body);
            return json.RootElement.ValueKind == JsonValueKind.Object && !json.RootElement.EnumerateObject().Any();
        }
        catch (JsonException)
        {
            return false;
        }
    }
}
