using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Search;

/// <summary>Which entries are about a part that a message names.</summary>
internal sealed class Subjects
{
    private readonly ImmutableArray<(SearchEntry Entry, ImmutableHashSet<string> Title, ImmutableHashSet<string> Words)> pages;
    private readonly ImmutableHashSet<string> parts;

    public Subjects(ImmutableArray<SearchEntry> entries, IEnumerable<Phrase> phrases, TradeAnalyzer analyzer)
    {
        var words = phrases.ToLookup(phrase => phrase.Page, phrase => phrase.Bag);
        pages =
        [
            .. entries.Select((entry, page) => (Entry: entry, Page: page))
                .Where(at => at.Entry.Kind is NodeKind.Fault or NodeKind.Check)
                .Select(at => (at.Entry, TitleTerms(at.Entry, analyzer), words[at.Page].SelectMany(bag => bag.Terms.Keys).ToImmutableHashSet())),
        ];
        parts = [.. pages.Where(page => page.Entry.Kind == NodeKind.Fault).SelectMany(page => page.Title).Where(term => !States.Ill.Contains(term) && !States.IsWell(term))];
    }

    /// <summary>Whether any of these words names a part.</summary>
    public bool NamesPart(IEnumerable<Token> tokens) =>
        tokens.Any(token => token.Role == TokenRole.Main && parts.Contains(token.Stem));

    /// <summary>The entries whose title names every part in the mention and whose words know the state that is denied.</summary>
    public IEnumerable<SearchEntry> Named(RuledOut mention)
    {
        ImmutableHashSet<string> named =
            [.. mention.Tokens.Where(token => token.Role != TokenRole.Aside && !token.IsNegated).Select(token => token.Term).Where(parts.Contains)];
        ImmutableHashSet<string> states = [.. mention.States];
        foreach (var (entry, title, words) in pages)
        {
            var ofPart = named.IsEmpty ? states.Overlaps(title) : named.IsSubsetOf(title);
            if (ofPart && (states.IsEmpty || states.Overlaps(words)))
                yield return entry;
        }
    }

    private static ImmutableHashSet<string> TitleTerms(SearchEntry entry, TradeAnalyzer analyzer) =>
        [.. TermBag.Of(analyzer.Analyze(WordSplitter.Split(entry.Title + " " + entry.Id.Replace('-', ' ')))).Terms.Keys];
}
