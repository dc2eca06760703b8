using System.Collections.Immutable;
using DxAssistant.Knowledge.Search.Gates;
using DxAssistant.Knowledge.Search.Indexing;

namespace DxAssistant.Knowledge.Search.Requests;

/// <summary>
/// Finds requests that can hurt someone: by rules, by their manner, and by likeness to the refusal pages.
/// </summary>
internal sealed class UnsafeRequests(SearchIndex index)
{
    /// <summary>The refusal page for a message, or null when nothing in it is unsafe.</summary>
    public string? Page(HeardMessage message)
    {
        var talksOfSafety = SafetyTalk.Is(message.Request, message.DangerRule is not null);
        var asksForSafety = SafetyTalk.Asks(message.Request, message.DangerRule is not null);
        if (message.DangerRule is { } plain
            && (plain.IsOutright
                || ((Intent.IsOrder(message.Request) || Intent.AsksOutright(message.Request))
                    && !Intent.TellsOfTrouble(message.Tokens) && !asksForSafety)))
            return PageOf(plain, message.Refusals);
        if (StandsOnPage(message))
            return message.Refusals[0].Entry.Id;
        if (DangerGate.OfDanger(message) < DangerGate.ThresholdFor(message) || Intent.IsMereReport(message.Request)
            || SettledTalk.Is(message.Request) || talksOfSafety
            || (message.DangerRule is null
                && (IsKnownHarmless(message) || SafetyTalk.TellsOfSafety(message.Request)
                    || SafeWays.Is(message.Request) || NamesNothing(message))))
            return null;
        return message.DangerRule is { } rule
            ? PageOf(rule, message.Refusals)
            : message.Refusals.MaxBy(hit => hit.Probability)?.Entry.Id;
    }

    /// <summary>
    /// What a refusal page holds word for word is a request, whatever else it is like; a scrap may be an answer too.
    /// </summary>
    private static bool StandsOnPage(HeardMessage message) =>
        message.LikenessToDanger >= MatchThresholds.SameWording
            && message.LikenessToDanger > message.LikenessToHarmless && !DangerGate.IsUnaskedScrap(message.Request);

    private static bool IsKnownHarmless(HeardMessage message) =>
        message.LikenessToHarmless >= MatchThresholds.SameWording
            && message.LikenessToHarmless > message.LikenessToDanger;

    /// <summary>
    /// One word of meaning that names no part and no trouble is like anything: "can i skip this", "i'll go check".
    /// </summary>
    private static bool NamesNothing(HeardMessage message) =>
        message.IsScrap && !message.Hearing.SaysEnough && message.Reading.RuledOut.IsEmpty;

    /// <summary>
    /// The page that reads clearly most like the message; else the rule's own, if the content has it.
    /// </summary>
    private string PageOf(UnsafeRule rule, ImmutableArray<SearchHit> pages)
    {
        if (pages.MaxBy(hit => hit.Probability) is { } likeliest && likeliest.Probability >= MatchThresholds.ClearPage)
            return likeliest.Entry.Id;
        return pages.IsEmpty || index.Entries.Any(entry => entry.Kind == NodeKind.Refusal && entry.Id == rule.Page)
            ? rule.Page
            : pages[0].Entry.Id;
    }
}
