using System.Security.Cryptography;
using System.Text;
using DxAssistant.Cases.Requests;
using DxAssistant.Server.Chat;
using DxAssistant.Server.Desk;

namespace DxAssistant.Server.Api;

/// <summary>Requests that make something and are not to make it twice, however often they are sent.</summary>
/// <remarks>
/// Source, from memory: draft-ietf-httpapi-idempotency-key-header-07: the key is a string of the sender's, once used
/// for one request; another request under it is refused with 422. Here the name of what is made is fixed before it is
/// made, so a request that broke off in the middle is carried to its end by the next.
/// </remarks>
internal sealed class RequestKeys(RequestBook book, TimeProvider clock)
{
    public const string Header = "Idempotency-Key";
    public const string Says =
        "A text of your own, 1 to 200 printable characters, new for each thing to be made. Kept for a day.";

    private const int Longest = 200;
    private const string Wrong =
        "An Idempotency-Key is 1 to 200 printable ASCII characters, new for each thing to be made.";
    private const string Other = "This Idempotency-Key came with another request before: choose a new one.";
    private static readonly TimeSpan Kept = TimeSpan.FromDays(1);

    /// <summary>Looks whether a request was made before.</summary>
    /// <param name="asked">What it asks for, so that another one under its key is told.</param>
    /// <param name="made">The name for what it makes.</param>
    /// <returns>The name to use, whether it is the first of its key, and why it is refused.</returns>
    public async Task<(string Made, bool IsFirst, IResult? Refusal)> TakeAsync(
        HttpContext http, string asked, string made, CancellationToken cancel)
    {
        if (http.Request.Headers[Header] is not { Count: > 0 } given) return (made, true, null);
        if (given is not [{ Length: > 0 and <= Longest } key] || !key.All(c => c is >= ' ' and <= '~'))
            return (made, true, Refusal.Because(StatusCodes.Status400BadRequest, Wrong));
        var now = clock.GetUtcNow();
        await book.ForgetAsync(now - Kept, cancel);
        var taken = await book.TakeAsync(Clerks.PersonOf(http).Name, key, asked, made, now, cancel);
        return (taken.Made, taken.IsFirst, taken.IsSame
            ? null
            : Refusal.Because(StatusCodes.Status422UnprocessableEntity, Other));
    }

    /// <summary>A long part of a request, short: kept is only what tells it from another.</summary>
    public static string Short(string text) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)));
}
