using System.Collections.Immutable;
using Microsoft.AspNetCore.WebUtilities;

namespace DxAssistant.Server.Chat;

/// <summary>Why a request was not carried out, in one line a person can act on.</summary>
/// <param name="Title">The name of the status, the same for all refusals that share it.</param>
/// <param name="Status">The HTTP status code.</param>
/// <param name="Detail">The line.</param>
/// <param name="Missing">What stands in the way, one by one; null where the line says it all.</param>
/// <param name="Meant">What was probably meant; null where nothing is near.</param>
/// <remarks>
/// Source: RFC 9457, problem details; without a type it is about:blank, so the title is the status's.
/// </remarks>
internal sealed record Refusal(string Title, int Status, string Detail, ImmutableArray<string>? Missing = null,
    string? Meant = null)
{
    /// <summary>What such an answer is called.</summary>
    public const string MediaType = "application/problem+json";

    public static IResult Because(int status, string detail, ImmutableArray<string>? missing = null,
        string? meant = null) =>
        Results.Json(
            new Refusal(ReasonPhrases.GetReasonPhrase(status), status, detail, missing, meant), ChatJson.Options,
            MediaType, status);
}
