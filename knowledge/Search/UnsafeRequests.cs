using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Search;

/// <summary>Finds requests that can hurt someone: by rule first, then by likeness to the refusal pages.</summary>
internal sealed class UnsafeRequests(SearchIndex index)
{
    /// <summary>The refusal page for a message, or null when nothing in it is unsafe.</summary>
    /// <param name="bestFault">Score of the fault that fits best.</param>
    public string? Page(ImmutableArray<Word> words, ImmutableArray<Token> tokens, double bestFault)
    {
        var request = new RequestWords(words, tokens);
        if (Intent.IsReport(request))
            return null;
        var pages = index.Find(TermBag.Of(tokens), NodeKind.Refusal);
        if (UnsafeRules.All.FirstOrDefault(rule => rule.Fits(request)) is { } rule)
            return PageOf(rule, pages);
        return pages.Length > 0 && pages[0].Score >= MatchThresholds.Unsafe && pages[0].Score > bestFault ? pages[0].Entry.Id : null;
    }

    /// <summary>The rule's own page; where the content has none of that name, the one that reads most like the message.</summary>
    private string PageOf(UnsafeRule rule, ImmutableArray<SearchHit> pages) =>
        pages.IsEmpty || index.Entries.Any(entry => entry.Kind == NodeKind.Refusal && entry.Id == rule.Page)
            ? rule.Page
            : pages[0].Entry.Id;
}
