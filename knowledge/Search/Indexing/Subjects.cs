using System.Collections.Frozen;
using System.Collections.Immutable;
using DxAssistant.Knowledge.Search.Clauses;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Indexing;

/// <summary>Which entries are about a part that a message names.</summary>
internal sealed class Subjects
{
    private readonly ImmutableArray<(SearchEntry Entry, FrozenSet<string> Title, FrozenSet<string> Words)> pages;
    private readonly ILookup<string, int> byTitle;
    private readonly FrozenSet<string> parts;
    private readonly Dictionary<string, int> titles;

    public Subjects(ImmutableArray<SearchEntry> entries, IEnumerable<Phrase> phrases, TradeAnalyzer analyzer)
    {
        var words = phrases.ToLookup(phrase => phrase.Page, phrase => phrase.Bag);
        pages =
        [
            .. entries.Select((entry, page) => (Entry: entry, Page: page))
                .Where(at => at.Entry.Kind is NodeKind.Fault or NodeKind.Check)
                .Select(at => (at.Entry, TitleTerms(at.Entry, analyzer),
                    words[at.Page].SelectMany(bag => bag.Terms.Keys).ToFrozenSet(StringComparer.Ordinal))),
        ];
        byTitle = pages.SelectMany((page, at) => page.Title.Select(term => (term, at)))
            .ToLookup(title => title.term, title => title.at, StringComparer.Ordinal);
        parts = pages.Where(page => page.Entry.Kind == NodeKind.Fault).SelectMany(page => page.Title)
            .Where(term => !States.Ill.Contains(term) && !States.IsWell(term)).ToFrozenSet(StringComparer.Ordinal);
        titles = pages.Where(page => page.Entry.Kind == NodeKind.Fault).SelectMany(page => page.Title)
            .GroupBy(term => term, StringComparer.Ordinal)
            .ToDictionary(term => term.Key, term => term.Count(), StringComparer.Ordinal);
    }

    /// <summary>Whether any of these terms stands in the title of an entry.</summary>
    public bool IsTitledBy(SearchEntry entry, IEnumerable<string> terms) =>
        terms.Any(term => byTitle[term].Any(at => ReferenceEquals(pages[at].Entry, entry)));

    /// <summary>Whether any of these words names a part.</summary>
    public bool NamesPart(IEnumerable<Token> tokens) =>
        tokens.Any(token => token.Role == TokenRole.Main && parts.Contains(token.Stem));

    /// <summary>
    /// The entries that a mention is about: their title names its most telling part and their words know the rest and
    /// the state that is denied, unless the complaint names a part of theirs that tells more.
    /// </summary>
    /// <param name="complaint">The terms of what the message complains of.</param>
    public IEnumerable<SearchEntry> Named(RuledOut mention, IReadOnlySet<string> complaint)
    {
        var named = mention.Tokens.Where(token => token.Role != TokenRole.Aside && !token.IsNegated)
            .Select(token => token.Term).Where(parts.Contains)
            .ToHashSet(StringComparer.Ordinal);
        var states = mention.States.ToHashSet(StringComparer.Ordinal);
        var rarest = named.Order(StringComparer.Ordinal).MinBy(TitlesWith);
        var about = rarest is not null
            ? byTitle[rarest].Select(at => pages[at])
                .Where(page => named.All(part => page.Title.Contains(part) || page.Words.Contains(part))).ToList()
            : mention.IsOutright && states.Count > 0 ? pages.Where(page => states.Overlaps(page.Title)).ToList() : [];
        // "motor ohms out equal": what is denied is a part of its own, wherever the named one belongs to it.
        foreach (var state in states.Where(parts.Contains).Order(StringComparer.Ordinal))
            about.AddRange(byTitle[state].Select(at => pages[at])
                .Where(page => !about.Contains(page) && named.All(page.Words.Contains)));
        var most = about.Select(page => named.Count(page.Title.Contains)).DefaultIfEmpty().Max();
        return about.Where(
            page => (named.Count(page.Title.Contains) == most
                || page.Title.Any(term => states.Contains(term) && parts.Contains(term)))
                && Denies(states, page.Title, page.Words) && !TellsMore(complaint, page.Title, named, rarest))
            .Select(page => page.Entry);
    }

    /// <summary>
    /// A title that names another trouble is not denied: "not stuck" says nothing of a coil that is open.
    /// </summary>
    private static bool Denies(HashSet<string> states, FrozenSet<string> title, FrozenSet<string> words) =>
        states.Count == 0 || states.Overlaps(title) || (states.Overlaps(words) && !title.Any(States.Ill.Contains));

    private bool TellsMore(IReadOnlySet<string> complaint, FrozenSet<string> title, HashSet<string> named,
        string? rarest) =>
        title.Any(part => complaint.Contains(part) && parts.Contains(part) && !named.Contains(part)
            && (rarest is null || TitlesWith(part) < TitlesWith(rarest)));

    private int TitlesWith(string part) => titles.GetValueOrDefault(part, int.MaxValue);

    private static FrozenSet<string> TitleTerms(SearchEntry entry, TradeAnalyzer analyzer) =>
        TermBag.Of(
            analyzer.Analyze(WordSplitter.Split(entry.Title + " "
                + entry.Id.Replace('-', ' ')))).Terms.Keys.ToFrozenSet(StringComparer.Ordinal);
}
