using System.Globalization;
using DxAssistant.Server.Chat;
using Microsoft.AspNetCore.WebUtilities;

namespace DxAssistant.Server.Api;

/// <summary>Lists page by page.</summary>
internal static class Paging
{
    /// <summary>How many a page holds unless asked otherwise.</summary>
    public const int Usual = 100;

    /// <summary>How many a page holds at most.</summary>
    public const int Most = 1000;

    /// <summary>How many are asked for.</summary>
    /// <returns>Null when it is not 1 to <see cref="Most"/>.</returns>
    public static int? Read(int? limit) => limit is null ? Usual : limit is >= 1 and <= Most ? limit : null;

    public static IResult BadLimit() => Refusal.Because(
        StatusCodes.Status400BadRequest,
        string.Create(CultureInfo.InvariantCulture, $"A page holds 1 to {Most}: give limit so."));

    public static IResult BadPlace() => Refusal.Because(
        StatusCodes.Status400BadRequest,
        "That is no place in this list: take the next page's address from the header Link.");

    /// <summary>Names the next page in the answer's head.</summary>
    /// <param name="name">The part of the query that says where a page begins.</param>
    /// <param name="place">Where the next one does; null when there is none.</param>
    /// <remarks>Source: RFC 8288, section 3; the relation "next" as registered there.</remarks>
    public static void Next(HttpContext http, string name, string? place)
    {
        if (place is null) return;
        var query = QueryHelpers.ParseQuery(http.Request.QueryString.Value);
        query[name] = place;
        string address = QueryHelpers.AddQueryString(http.Request.Path, query);
        http.Response.Headers.Link = $"<{address}>; rel=\"next\"";
    }
}
