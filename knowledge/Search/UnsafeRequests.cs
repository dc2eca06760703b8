using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Search;

/// <summary>Finds requests that can hurt someone: by rule first, then by likeness to the refusal pages.</summary>
internal sealed class UnsafeRequests(SearchIndex index)
{
    /// <summary>The refusal page for a message, or null when nothing in it is unsafe.</summary>
    /// <param name="question">The whole message, as the index knows it.</param>
    /// <param name="intention">What the words make the message.</param>
    /// <param name="heard">What the search found in it.</param>
    public string? Page(RequestWords request, Question question, Intention intention, Hearing heard)
    {
        if (Intent.IsMereReport(request))
            return null;
        var rule = UnsafeRules.Fitting(request);
        var isCertain = rule is not null && Intent.AsksOutright(request) && !Intent.IsReport(request);
        var least = AsksAnything(request) ? MatchThresholds.Unsafe : MatchThresholds.UnsafeUnasked;
        if (rule is null && !AsksAnything(request) && question.Said.Terms.Count <= 1)
            return null; // an answer or a scrap, like "every time it runs"
        var pages = index.Find(question, NodeKind.Refusal);
        if (!isCertain && !IsWording(request, pages, intention, heard) && DangerGate.OfDanger(request, intention, heard, rule is not null) < least)
            return null;
        if (rule is null && intention.Unsafe < intention.OffTopic)
            return null;
        return rule is null ? pages.MaxBy(hit => hit.Probability)?.Entry.Id : PageOf(rule, pages);
    }

    /// <summary>It says nearly what a refusal page says, and no page of the trade says as much.</summary>
    private static bool IsWording(RequestWords request, ImmutableArray<SearchHit> pages, Intention intention, Hearing heard) =>
        intention.Unsafe > intention.Trade && !AsksHowItStands(request) && !Intent.TellsDone(request) && pages.Select(hit => hit.Score).DefaultIfEmpty().Max() is var closest && closest >= MatchThresholds.UnsafeWording && closest > heard.Best + MatchThresholds.ClearlyUnsafe;

    /// <summary>"is the service valve open".</summary>
    private static bool AsksHowItStands(RequestWords request) =>
        request[0] is ("is" or "are" or "was" or "were" or "does" or "did") && request[1] is ("the" or "my" or "this" or "a");

    private static bool AsksAnything(RequestWords request) => Intent.AsksOutright(request) || request.EndsAsQuestion;

    /// <summary>The page that reads clearly most like the message; else the rule's own, if the content has it.</summary>
    private string PageOf(UnsafeRule rule, ImmutableArray<SearchHit> pages)
    {
        if (pages.MaxBy(hit => hit.Probability) is { } likeliest && likeliest.Probability >= MatchThresholds.ClearPage)
            return likeliest.Entry.Id;
        return pages.IsEmpty || index.Entries.Any(entry => entry.Kind == NodeKind.Refusal && entry.Id == rule.Page)
            ? rule.Page
            : pages[0].Entry.Id;
    }
}
