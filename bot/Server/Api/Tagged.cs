using System.Security.Cryptography;
using System.Text.Json;
using DxAssistant.Server.Chat;
using Microsoft.Net.Http.Headers;

namespace DxAssistant.Server.Api;

/// <summary>
/// Answers that bear a tag of what they say, so that it is not sent again to who has it, and not overwritten by who
/// does not know it.
/// </summary>
/// <remarks>Source: RFC 9110, 8.8.3 (ETag), 13.1.1 (If-Match), 13.1.2 (If-None-Match).</remarks>
internal static class Tagged
{
    private const string Type = "application/json; charset=utf-8";
    private const int Length = 22;

    /// <summary>An answer with its tag; 304 when the request has it already.</summary>
    public static IResult Json<T>(T said)
    {
        byte[] bytes = Bytes(said);
        return Results.Bytes(bytes, Type, entityTag: TagOf(bytes));
    }

    /// <summary>An answer of any kind with its tag.</summary>
    public static IResult Of(byte[] bytes, string type) => Results.Bytes(bytes, type, entityTag: TagOf(bytes));

    /// <summary>Whether a request lets itself be carried out only on something else than this.</summary>
    public static bool IsStale<T>(HttpRequest request, T now)
    {
        var wanted = request.GetTypedHeaders().IfMatch;
        if (wanted.Count == 0) return false;
        var tag = TagOf(Bytes(now));
        return !wanted.Any(one => one.Equals(EntityTagHeaderValue.Any) || one.Compare(tag, useStrongComparison: true));
    }

    /// <summary>Whether a request wants to be carried out only on what it knows.</summary>
    public static bool IsConditional(HttpRequest request) => request.GetTypedHeaders().IfMatch.Count > 0;

    /// <summary>What is said to a request whose condition cannot be read; null when it can, or there is none.</summary>
    public static IResult? Unreadable(HttpRequest request) =>
        request.Headers.IfMatch is { Count: > 0 } said
            && !EntityTagHeaderValue.TryParseStrictList(said.ToArray()!, out _)
            ? Refusal.Because(StatusCodes.Status400BadRequest,
                "If-Match is not a tag: give the ETag back as it came, in its quotes.") : null;

    /// <summary>What is said to a request that is stale.</summary>
    public static IResult Stale() => Refusal.Because(
        StatusCodes.Status412PreconditionFailed, "Somebody else changed it meanwhile. Read it again, then decide.");

    private static byte[] Bytes<T>(T said) => JsonSerializer.SerializeToUtf8Bytes(said, ChatJson.Options);

    private static EntityTagHeaderValue TagOf(byte[] bytes) =>
        new($"\"{Convert.ToBase64String(SHA256.HashData(bytes))[..Length].Replace('+', '-').Replace('/', '_')}\"");
}
