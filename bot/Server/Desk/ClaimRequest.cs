using System.Text.Json;
using DxAssistant.Cases.Claims;
using DxAssistant.Server.Chat;

namespace DxAssistant.Server.Desk;

/// <summary>What a page or program asks to be done to a claim.</summary>
/// <param name="Act"><c>unit</c>, <c>ready</c>, <c>submit</c>, <c>approve</c>, <c>decline</c> or <c>return</c>.</param>
/// <param name="After">The last entry of the claim's log that was seen.</param>
/// <param name="Why">The reason, where one is needed.</param>
internal sealed record ClaimRequest(string? Act, long After, string? Why, ClaimUnit? Unit)
{
    // Longer words are a mistake or an attack, and would not fit on a sheet.
    private const int LongestField = 200;

    /// <summary>The request in a body; null when that is none.</summary>
    public static async Task<ClaimRequest?> ReadAsync(HttpRequest request, CancellationToken cancel)
    {
        try
        {
            return await JsonSerializer.DeserializeAsync<ClaimRequest>(request.Body, ChatJson.Options, cancel);
        }
        catch (JsonException)
        {
            return null;
        }
    }

    /// <summary>The act; null when it is none.</summary>
    public ClaimAct? ToAct() => Act switch
    {
        "unit" when Unit is { } unit && Fits(unit) => new ClaimAct.TellUnit(Trimmed(unit)),
        "ready" => new ClaimAct.MakeReady(Why),
        "submit" => new ClaimAct.Submit(),
        "approve" => new ClaimAct.Approve(Why),
        "decline" => new ClaimAct.Decline(Why),
        "return" => new ClaimAct.Return(Why),
        _ => null,
    };

    private static bool Fits(ClaimUnit unit) =>
        (unit.Model?.Length ?? 0) <= LongestField && (unit.Serial?.Length ?? 0) <= LongestField
            && (unit.Site?.Length ?? 0) <= LongestField;

    private static ClaimUnit Trimmed(ClaimUnit unit) =>
        unit with { Model = Said(unit.Model), Serial = Said(unit.Serial), Site = Said(unit.Site) };

    private static string? Said(string? words) => string.IsNullOrWhiteSpace(words) ? null : words.Trim();
}
