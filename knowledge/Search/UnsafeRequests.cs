using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Search;

/// <summary>Finds requests that can hurt someone: by rule first, then by likeness to the refusal pages.</summary>
internal sealed class UnsafeRequests(SearchIndex index)
{
    /// <summary>The refusal page for a message, or null when nothing in it is unsafe.</summary>
    /// <param name="intention">What the words make the message.</param>
    public string? Page(ImmutableArray<Word> words, ImmutableArray<Token> tokens, Intention intention)
    {
        var request = new RequestWords(words, tokens);
        if (Intent.IsReport(request))
            return null;
        var rule = UnsafeRules.All.FirstOrDefault(rule => rule.Fits(request));
        var least = Intent.IsAsked(request) ? MatchThresholds.Unsafe : MatchThresholds.UnsafeUnasked;
        if (rule is null && (intention.Unsafe < least || intention.Unsafe < intention.OffTopic))
            return null;
        var pages = index.Find(TermBag.Of(tokens), NodeKind.Refusal);
        return rule is null ? pages.MaxBy(hit => hit.Probability)?.Entry.Id : PageOf(rule, pages);
    }

    /// <summary>The rule's own page; where the content has none of that name, the one that reads most like the message.</summary>
    private string PageOf(UnsafeRule rule, ImmutableArray<SearchHit> pages) =>
        pages.IsEmpty || index.Entries.Any(entry => entry.Kind == NodeKind.Refusal && entry.Id == rule.Page)
            ? rule.Page
            : pages[0].Entry.Id;
}
