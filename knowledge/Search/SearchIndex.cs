using System.Collections.Immutable;
using Lucene.Net.Index;
using Lucene.Net.Search;

namespace DxAssistant.Knowledge.Search;

/// <summary>The pages as the search sees them. Immutable once built; may be asked by many at once.</summary>
public sealed class SearchIndex
{
    /// <summary>How many documents are looked at closely for one question.</summary>
    private const int Looked = 400;

    /// <summary>How many pages are told apart by the plain words of a message.</summary>
    private const int Rivals = 8;

    /// <summary>How many wordings of one page count.</summary>
    private const int Crowd = 3;

    private readonly IndexSearcher searcher;
    // Documents stand in the order they were written: first the phrases, then the pages.
    private readonly ImmutableArray<Phrase> phrases;
    private readonly ImmutableArray<double> totals;
    private readonly TradeAnalyzer analyzer;
    private readonly Closeness closeness;
    private readonly Subjects subjects;
    private readonly Dictionary<NodeKind, WordingModel> models;
    private readonly WordingModel intentions;
    private readonly FeatureNumbers features;
    private readonly Vocabulary vocabulary;
    private readonly ILookup<string, Phrase> wordings;
    private readonly HashSet<string> tradeWords;

    private SearchIndex(IndexReader reader, ImmutableArray<SearchEntry> entries, ImmutableArray<Phrase> phrases,
        TradeAnalyzer analyzer, Thesaurus thesaurus)
    {
        (Entries, this.phrases, this.analyzer) = (entries, phrases, analyzer);
        searcher = new IndexSearcher(reader) { Similarity = IndexWriting.Similarity };
        vocabulary = new Vocabulary(reader, thesaurus);
        closeness = new Closeness(new Rarity(reader, entries.Length));
        totals = [.. phrases.Select(phrase => closeness.Total(phrase.Bag))];
        wordings = phrases.ToLookup(phrase => Row(Negation.Normalize(WordSplitter.Split(phrase.Text))), StringComparer.Ordinal);
        tradeWords = phrases.Where(phrase => entries[phrase.Page].Kind is NodeKind.Fault or NodeKind.Symptom).SelectMany(phrase => phrase.Bag.Plain).ToHashSet(StringComparer.Ordinal);
        subjects = new Subjects(entries, phrases, analyzer);
        features = new FeatureNumbers(phrases);
        models = features.All.GroupBy(wording => entries[wording.Wording.Page].Kind)
            .ToDictionary(kind => kind.Key, kind => new WordingModel([.. kind], features.Count, wording => wording.Page));
        intentions = new WordingModel(features.All, features.Count, wording => (int)Intended(entries[wording.Page].Kind));
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

    /// <summary>The entries of a kind that fit, best first; ties by id.</summary>
    internal ImmutableArray<SearchHit> Find(TermBag said, NodeKind kind)
    {
        if (said.IsEmpty || !models.TryGetValue(kind, out var model))
            return [];
        var all = closeness.Total(said);
        var found = searcher.Search(Queries.Phrases(said, kind), Looked).ScoreDocs
            .Select(document => (Phrase: phrases[document.Doc], Total: totals[document.Doc]))
            .GroupBy(at => at.Phrase.Page, at => (Score: closeness.Of(said, all, at.Phrase.Bag, at.Total), at.Phrase.Text))
            .ToDictionary(page => page.Key, page => ClosestOf([.. page.OrderByDescending(phrase => phrase.Score).Take(Crowd)]));
        var whole = Pages(Queries.Pages(said, kind), closeness.BestPossible(said));
        var plain = Pages(Queries.Plain(said, kind), closeness.BestPlain(said));
        var judged = model.Judge(features.Known(said));
        return
        [
            .. found.Keys.Union(whole.Keys).Union(judged.Keys.Where(page => judged[page] > 0.02)).Order()
                .Select(page => Hit(page, found.GetValueOrDefault(page, ClosestWording.None), whole.GetValueOrDefault(page), plain.GetValueOrDefault(page), judged.GetValueOrDefault(page)))
                .OrderByDescending(hit => hit.Score),
        ];
    }

    /// <summary>How well the pages of a kind fit the plain words, as shares of a perfect fit; the best few only.</summary>
    internal IReadOnlyDictionary<string, double> FindPlain(TermBag said, NodeKind kind)
    {
        var best = closeness.BestPlain(said);
        return searcher.Search(Queries.Plain(said, kind), Rivals).ScoreDocs.ToDictionary(
            document => Entries[document.Doc - phrases.Length].Id, document => Math.Min(1.0, document.Score / best), StringComparer.Ordinal);
    }

    /// <summary>The entries of a kind that hold the very words.</summary>
    internal IEnumerable<string> Holding(ImmutableArray<Word> words, NodeKind kind) =>
        wordings[Row(words)].Select(phrase => Entries[phrase.Page]).Where(entry => entry.Kind == kind).Select(entry => entry.Id);

    /// <summary>Of the words of meaning, the share that the pages of faults and symptoms know.</summary>
    internal double KnownShare(ImmutableArray<Token> tokens)
    {
        var stems = Stemmer.StemAll(tokens.Where(token => token.Role == TokenRole.Main).SelectMany(token => token.Said.Split(' ', StringSplitOptions.RemoveEmptyEntries)).ToList());
        return stems.IsEmpty ? 0 : (double)stems.Count(tradeWords.Contains) / stems.Length;
    }

    private static string Row(ImmutableArray<Word> words) => string.Join(' ', words.Select(word => word.Text));

    /// <summary>What all the words of a message make it.</summary>
    internal Intention IntentionOf(TermBag said)
    {
        var judged = intentions.Judge(features.Known(said));
        return new Intention(judged.GetValueOrDefault((int)NodeKind.Fault), judged.GetValueOrDefault((int)NodeKind.OffTopic), judged.GetValueOrDefault((int)NodeKind.Refusal));
    }

    private static NodeKind Intended(NodeKind kind) => kind is NodeKind.OffTopic or NodeKind.Refusal ? kind : NodeKind.Fault;

    /// <summary>The closest wording's score, drawn a little towards the mean of the best few.</summary>
    private static ClosestWording ClosestOf(ImmutableArray<(double Score, string Text)> best) => new(
        best[0].Text,
        ((1 - Weights.Crowd) * best[0].Score) + (Weights.Crowd * best.Sum(phrase => phrase.Score) / Crowd),
        best[0].Score >= 1);

    /// <summary>The faults and checks about what a mention names.</summary>
    /// <param name="complaint">The terms of what the message complains of.</param>
    internal IEnumerable<SearchEntry> Naming(RuledOut mention, IReadOnlySet<string> complaint) => subjects.Named(mention, complaint);

    /// <summary>Whether any of these words names a part that a fault or check is about.</summary>
    internal bool NamesPart(IEnumerable<Token> tokens) => subjects.NamesPart(tokens);

    /// <summary>Whether words name a part or something that the glossary knows, say that something is wrong, or are at least two.</summary>
    internal bool SaysEnough(ImmutableArray<Token> tokens) =>
        subjects.NamesPart(tokens)
        || tokens.Any(token => token.IsNegated || (token.Role == TokenRole.Main && (token.IsConcept || States.Ill.Contains(token.Term))))
        || tokens.Where(token => token.Role == TokenRole.Main).Select(token => token.Term).Distinct(StringComparer.Ordinal).Count() > 1;

    /// <summary>Pages by a query, each score as a share of the best one possible.</summary>
    private Dictionary<int, double> Pages(Query query, float best) =>
        searcher.Search(query, Looked).ScoreDocs.ToDictionary(document => document.Doc - phrases.Length, document => Math.Min(1.0, document.Score / best));

    /// <param name="judged">How probable the model holds the page to be.</param>
    private SearchHit Hit(int page, ClosestWording closest, double whole, double plain, double judged)
    {
        var fit = (Weights.Phrase * closest.Score) + (Weights.Page * whole) + (Weights.Plain * plain);
        var score = closest.IsSame ? Weights.Own + ((1 - Weights.Own) * fit) : fit;
        return new SearchHit(Entries[page], Math.Round(score, 9), Math.Round(judged, 9), closest.Text);
    }

    private static IEnumerable<Phrase> PhrasesOf(SearchEntry entry, int page, TradeAnalyzer analyzer) =>
        entry.Phrases.Prepend(entry.Title)
            .Select(text => new Phrase(page, text, TermBag.Of(analyzer.Analyze(WordSplitter.Split(text)))))
            .Where(phrase => !phrase.Bag.IsEmpty);
}
