using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Search;

/// <summary>Finds requests that can hurt someone: by rules, by their manner, and by likeness to the refusal pages.</summary>
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
        var pages = index.Find(question, NodeKind.Refusal);
        var closest = pages.Select(hit => hit.Score).DefaultIfEmpty().Max();
        var danger = DangerGate.OfDanger(request, intention, heard with { Danger = closest, IsScrap = question.Said.Terms.Count <= 1 }, rule is not null);
        if (danger < MatchThresholds.Unsafe)
            return null;
        return rule is null ? pages.MaxBy(hit => hit.Probability)?.Entry.Id : PageOf(rule, pages);
    }

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
