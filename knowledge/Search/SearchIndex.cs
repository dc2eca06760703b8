using System.Collections.Immutable;
using System.Globalization;
using Lucene.Net.Index;
using Lucene.Net.Search;

namespace DxAssistant.Knowledge.Search;

/// <summary>The pages as the search sees them. Immutable once built; may be asked by many at once.</summary>
public sealed class SearchIndex
{
    /// <summary>How many documents are looked at closely for one question.</summary>
    private const int Looked = 400;

    /// <summary>How many wordings of one page count.</summary>
    private const int Crowd = 3;

    private readonly IndexSearcher searcher;
    private readonly ImmutableArray<Phrase> phrases;
    private readonly TradeAnalyzer analyzer;
    private readonly Closeness closeness;
    private readonly Subjects subjects;
    private readonly Vocabulary vocabulary;

    private SearchIndex(IndexReader reader, ImmutableArray<SearchEntry> entries, ImmutableArray<Phrase> phrases,
        TradeAnalyzer analyzer, Thesaurus thesaurus)
    {
        (Entries, this.phrases, this.analyzer) = (entries, phrases, analyzer);
        searcher = new IndexSearcher(reader) { Similarity = IndexWriting.Similarity };
        vocabulary = new Vocabulary(reader, thesaurus);
        closeness = new Closeness(new Rarity(reader, entries.Length));
        subjects = new Subjects(entries, phrases, analyzer);
    }

    /// <summary>By kind and id.</summary>
    public ImmutableArray<SearchEntry> Entries { get; }

    /// <summary>Indexes pages. The same pages and groups, in any order, give the same index.</summary>
    public static SearchIndex Build(IEnumerable<SearchEntry> pages, IEnumerable<SynonymGroup> glossary)
    {
        var thesaurus = new Thesaurus(glossary);
        var analyzer = new TradeAnalyzer(thesaurus);
        ImmutableArray<SearchEntry> entries =
            [.. pages.OrderBy(entry => entry.Kind).ThenBy(entry => entry.Id, StringComparer.Ordinal)];
        ImmutableArray<Phrase> phrases = [.. entries.SelectMany((entry, page) => PhrasesOf(entry, page, analyzer))];
        var reader = IndexWriting.Write(entries, phrases, analyzer, thesaurus);
        return new SearchIndex(reader, entries, phrases, analyzer, thesaurus);
    }

    /// <summary>The words of a text, misspellings mended and every way of saying "not" brought down to "not".</summary>
    internal ImmutableArray<Word> Words(string text) =>
        Negation.Normalize(Spelling.Mend(WordSplitter.Split(text), vocabulary));

    /// <summary>What words say, with synonyms brought to the glossary's words.</summary>
    internal ImmutableArray<Token> Analyze(ImmutableArray<Word> words) => analyzer.Analyze(words);

    /// <summary>The entries of some kinds that fit, best first; ties by kind and id.</summary>
    internal ImmutableArray<SearchHit> Find(TermBag said, params IReadOnlyCollection<NodeKind> kinds)
    {
        if (said.IsEmpty)
            return [];
        var found = searcher.Search(Queries.Phrases(said, kinds), Looked).ScoreDocs
            .Select(document => phrases[NumberOf(document)])
            .GroupBy(phrase => phrase.Page, phrase => (Score: closeness.Of(said, phrase.Bag), phrase.Text))
            .ToDictionary(page => page.Key, page => ClosestOf([.. page.OrderByDescending(phrase => phrase.Score).Take(Crowd)]));
        return Rank(found, Pages(Queries.Pages(said, kinds), closeness.BestPossible(said)), Pages(Queries.Plain(said, kinds), closeness.BestPlain(said)));
    }

    /// <summary>The closest wording's score, drawn a little towards the mean of the best few.</summary>
    private static (double Score, string Text) ClosestOf(ImmutableArray<(double Score, string Text)> best) =>
        (((1 - Weights.Crowd) * best[0].Score) + (Weights.Crowd * best.Sum(phrase => phrase.Score) / Crowd), best[0].Text);

    /// <summary>The faults and checks about what a mention names.</summary>
    internal IEnumerable<SearchEntry> Naming(RuledOut mention) => subjects.Named(mention);

    /// <summary>Whether any of these words names a part that a fault or check is about.</summary>
    internal bool NamesPart(IEnumerable<Token> tokens) => subjects.NamesPart(tokens);

    /// <summary>Whether words name a part or something that the glossary knows, say that something is wrong, or are at least two.</summary>
    internal bool SaysEnough(ImmutableArray<Token> tokens) =>
        subjects.NamesPart(tokens)
        || tokens.Any(token => token.IsNegated || (token.Role == TokenRole.Main && (token.IsConcept || States.Ill.Contains(token.Term))))
        || tokens.Where(token => token.Role == TokenRole.Main).Select(token => token.Position).Distinct().Count() > 1;

    /// <summary>Share of what was said that this index has words for, 0 to 1, rare words counting more.</summary>
    internal double Known(TermBag said) => closeness.Known(said);

    /// <summary>Pages by a query, each score as a share of the best one possible.</summary>
    private Dictionary<int, double> Pages(Query query, float best) =>
        searcher.Search(query, Looked).ScoreDocs.ToDictionary(NumberOf, document => Math.Min(1.0, document.Score / best));

    private ImmutableArray<SearchHit> Rank(
        Dictionary<int, (double Score, string Text)> closest, Dictionary<int, double> whole, Dictionary<int, double> plain) =>
    [
        .. closest.Keys.Union(whole.Keys).Order()
            .Select(page => Hit(page, closest.GetValueOrDefault(page, (0, "")), whole.GetValueOrDefault(page), plain.GetValueOrDefault(page)))
            .OrderByDescending(hit => hit.Score),
    ];

    private SearchHit Hit(int page, (double Score, string Text) closest, double whole, double plain) => new(
        Entries[page],
        Math.Round((Weights.Phrase * closest.Score) + (Weights.Page * whole) + (Weights.Plain * plain), 9),
        closest.Text);

    private int NumberOf(ScoreDoc document) =>
        int.Parse(searcher.Doc(document.Doc).Get(Fields.Number), CultureInfo.InvariantCulture);

    private static IEnumerable<Phrase> PhrasesOf(SearchEntry entry, int page, TradeAnalyzer analyzer) =>
        entry.Phrases.Prepend(entry.Title)
            .Select(text => new Phrase(page, text, TermBag.Of(analyzer.Analyze(WordSplitter.Split(text)))))
            .Where(phrase => !phrase.Bag.IsEmpty);
}
