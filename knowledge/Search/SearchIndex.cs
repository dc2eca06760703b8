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
        var closest = new Dictionary<int, (double Score, string Text)>();
        var all = new Dictionary<int, List<double>>();
        foreach (var document in searcher.Search(Queries.Phrases(said, kinds), Looked).ScoreDocs)
        {
            var phrase = phrases[NumberOf(document)];
            var score = closeness.Of(said, phrase.Bag);
            all.TryAdd(phrase.Page, []);
            all[phrase.Page].Add(score);
            if (score > closest.GetValueOrDefault(phrase.Page).Score)
                closest[phrase.Page] = (score, phrase.Text);
        }
        foreach (var (page, scores) in all)
        {
            var top = scores.OrderDescending().Take(3).ToList();
            var mean = top.Sum() / 3;
            closest[page] = ((1 - Weights.Second) * top[0] + Weights.Second * mean, closest[page].Text);
        }
        return Rank(closest, WholePages(said, kinds));
    }

    /// <summary>The faults and checks about what a mention names.</summary>
    internal IEnumerable<SearchEntry> Naming(RuledOut mention) => subjects.Named(mention);

    /// <summary>Share of what was said that this index has words for, 0 to 1, rare words counting more.</summary>
    internal double Known(TermBag said) => closeness.Known(said);

    private Dictionary<int, double> WholePages(TermBag said, IReadOnlyCollection<NodeKind> kinds)
    {
        var best = closeness.BestPossible(said);
        return searcher.Search(Queries.Pages(said, kinds), Looked).ScoreDocs
            .ToDictionary(NumberOf, document => Math.Min(1.0, document.Score / best));
    }

    private ImmutableArray<SearchHit> Rank(Dictionary<int, (double Score, string Text)> closest, Dictionary<int, double> whole) =>
    [
        .. closest.Keys.Union(whole.Keys).Order()
            .Select(page => Hit(page, closest.GetValueOrDefault(page, (0, "")), whole.GetValueOrDefault(page)))
            .OrderByDescending(hit => hit.Score),
    ];

    private SearchHit Hit(int page, (double Score, string Text) closest, double whole) =>
        new(Entries[page], Math.Round((Weights.Phrase * closest.Score) + (Weights.Page * whole), 9), closest.Text);

    private int NumberOf(ScoreDoc document) =>
        int.Parse(searcher.Doc(document.Doc).Get(Fields.Number), CultureInfo.InvariantCulture);

    private static IEnumerable<Phrase> PhrasesOf(SearchEntry entry, int page, TradeAnalyzer analyzer) =>
        entry.Phrases.Prepend(entry.Title)
            .Select(text => new Phrase(page, text, TermBag.Of(analyzer.Analyze(WordSplitter.Split(text)))))
            .Where(phrase => !phrase.Bag.IsEmpty);
}
