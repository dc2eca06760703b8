using System.Collections.Immutable;
using DxAssistant.Knowledge.Search.Clauses;
using DxAssistant.Knowledge.Search.Gates;
using DxAssistant.Knowledge.Search.Learning;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Indexing;

/// <summary>The pages as the search sees them. Immutable once built; may be asked by many at once.</summary>
public sealed class SearchIndex
{
    /// <summary>How many entries of a kind are found at most.</summary>
    private const int Found = 400;

    /// <summary>How many pages are told apart by the plain words of a message.</summary>
    private const int Rivals = 8;

    /// <summary>A page that shares no word is found from this probability on.</summary>
    private const double FaintestProbability = 0.02;

    private readonly PlainScores plain;
    private readonly Wordings wordings;
    private readonly TradeAnalyzer analyzer;
    private readonly Closeness closeness;
    private readonly Subjects subjects;
    private readonly Dictionary<NodeKind, WordingModel> models;
    private readonly WordingModel intentions;
    private readonly Features features;
    private readonly Vocabulary vocabulary;
    private readonly ILookup<string, int> pagesHolding;
    private readonly HashSet<string> tradeWords;
    /// <summary>Where the entries of each kind begin and end.</summary>
    private readonly Dictionary<NodeKind, (int First, int End)> kinds;

    internal SearchIndex(ImmutableArray<SearchEntry> entries, IndexParts parts)
    {
        (Entries, analyzer, plain, vocabulary, closeness, wordings) =
            (entries, parts.Analyzer, parts.Plain, parts.Vocabulary, parts.Closeness, parts.Wordings);
        (features, models, intentions) = (parts.Features, parts.Models, parts.Intentions);
        kinds = Enumerable.Range(0, entries.Length).GroupBy(page => entries[page].Kind)
            .ToDictionary(kind => kind.Key, kind => (kind.First(), kind.Last() + 1));
        pagesHolding = parts.Phrases.Concat(parts.Idle)
            .ToLookup(phrase => Row(Negation.Normalize(phrase.Words)), phrase => phrase.Page, StringComparer.Ordinal);
        tradeWords = parts.Phrases.Where(phrase => entries[phrase.Page].Kind is NodeKind.Fault or NodeKind.Symptom)
            .SelectMany(phrase => phrase.Bag.Plain).ToHashSet(StringComparer.Ordinal);
        subjects = new Subjects(entries, parts.Phrases, analyzer);
    }

    /// <summary>By kind and id.</summary>
    public ImmutableArray<SearchEntry> Entries { get; }

    /// <summary>Indexes pages. The same pages and groups, in any order, give the same index.</summary>
    public static SearchIndex Build(IEnumerable<SearchEntry> pages, IEnumerable<SynonymGroup> glossary) =>
        IndexMaking.Steps(pages, glossary).Last()!;

    /// <summary>The words of a text, misspellings mended and every way of saying "not" brought down to "not".</summary>
    internal ImmutableArray<Word> Words(string text) =>
        Negation.Normalize(Spelling.Mend(WordSplitter.Split(text), vocabulary));

    /// <summary>What words say, with synonyms brought to the glossary's words.</summary>
    internal ImmutableArray<Token> Analyze(ImmutableArray<Word> words) => analyzer.Analyze(words);

    /// <summary>Asks the index what it knows of all that was said, for the questions below.</summary>
    internal Question Ask(ImmutableArray<Token> tokens)
    {
        var said = TermBag.Of(tokens);
        return new Question(said, features.Known(said), Fits(said));
    }

    /// <summary>The entries of a kind that fit, best first; ties by id.</summary>
    internal ImmutableArray<SearchHit> Find(Question question, NodeKind kind)
    {
        if (question.Said.IsEmpty || !kinds.TryGetValue(kind, out var range))
            return [];
        var judged = models.TryGetValue(kind, out var model) ? model.Judge(question.Features) : Judged.Nothing;
        var best = new BestPages(Found);
        for (var page = range.First; page < range.End; page++)
        {
            var fit = question.Fits[page];
            if (fit.HasClose || judged.Of(page) > FaintestProbability)
                best.Offer(page, Score(fit));
        }
        var found = best.InOrder();
        var hits = ImmutableArray.CreateBuilder<SearchHit>(found.Length);
        foreach (var (page, score) in found)
            hits.Add(new SearchHit(Entries[page], score, Math.Round(judged.Of(page), 9)));
        return hits.MoveToImmutable();
    }

    /// <summary>
    /// The fault that the models hold likeliest for a few words; null when nothing was learnt or said.
    /// </summary>
    internal SearchHit? LikeliestFault(ImmutableArray<Token> tokens)
    {
        var said = TermBag.Of(tokens);
        return !said.IsEmpty && models.TryGetValue(NodeKind.Fault, out var model)
            && model.Judge(features.Known(said)).Likeliest is var (page, probability)
            ? new SearchHit(Entries[page], 0, probability)
            : null;
    }

    /// <summary>
    /// How well the pages of a kind fit the plain words, as shares of a perfect fit; the best few only.
    /// </summary>
    internal IReadOnlyDictionary<string, double> FindPlain(Question question, NodeKind kind)
    {
        if (!kinds.TryGetValue(kind, out var range))
            return ImmutableDictionary<string, double>.Empty;
        var best = new BestPages(Rivals);
        for (var page = range.First; page < range.End; page++)
        {
            if (question.Fits[page].Plain > 0)
                best.Offer(page, question.Fits[page].Plain);
        }
        var found = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach (var (page, score) in best.InOrder())
            found.Add(Entries[page].Id, score);
        return found;
    }

    /// <summary>The entries of a kind that hold the very words.</summary>
    internal IEnumerable<string> Holding(ImmutableArray<Word> words, NodeKind kind) =>
        pagesHolding[Row(words)].Select(page => Entries[page]).Where(entry => entry.Kind == kind)
            .Select(entry => entry.Id);

    /// <summary>Of the words of meaning, the share that the pages of faults and symptoms know.</summary>
    internal double KnownShare(ImmutableArray<Token> tokens)
    {
        var stems = Stemmer.StemAll(tokens.Where(token => token.Role == TokenRole.Main)
            .SelectMany(token => token.Said.Split(' ', StringSplitOptions.RemoveEmptyEntries)).ToList());
        return stems.IsEmpty ? 0 : (double)stems.Count(tradeWords.Contains) / stems.Length;
    }

    private static string Row(ImmutableArray<Word> words) => string.Join(' ', words.Select(word => word.Text));

    /// <summary>What all the words of a message make it.</summary>
    internal Intention IntentionOf(Question question)
    {
        var judged = intentions.Judge(question.Features);
        return new Intention(judged.Of((int)NodeKind.Fault), judged.Of((int)NodeKind.OffTopic),
            judged.Of((int)NodeKind.Refusal), judged.Of((int)NodeKind.Harmless));
    }

    /// <summary>The faults and checks about what a mention names.</summary>
    /// <param name="complaint">The terms of what the message complains of.</param>
    internal IEnumerable<SearchEntry> Naming(RuledOut mention, IReadOnlySet<string> complaint) =>
        subjects.Named(mention, complaint);

    /// <summary>Whether any of these terms stands in the title of an entry.</summary>
    internal bool IsTitledBy(SearchEntry entry, IEnumerable<string> terms) => subjects.IsTitledBy(entry, terms);

    /// <summary>Whether any of these words names a part that a fault or check is about.</summary>
    internal bool NamesPart(IEnumerable<Token> tokens) => subjects.NamesPart(tokens);

    /// <summary>
    /// Whether words name a part or something that the glossary knows, say that something is wrong, or are at least
    /// two.
    /// </summary>
    internal bool SaysEnough(ImmutableArray<Token> tokens) =>
        subjects.NamesPart(tokens)
        || tokens.Any(token => token.IsNegated
            || (token.Role == TokenRole.Main && (token.IsConcept || States.Ill.Contains(token.Term))))
        || tokens.Where(token => token.Role == TokenRole.Main).Select(token => token.Term)
            .Distinct(StringComparer.Ordinal).Count() > 1;

    /// <summary>How well each page fits.</summary>
    private Scratch<PageFit> Fits(TermBag said)
    {
        var fits = wordings.Closest(said);
        plain.Score(said, closeness.BestPlain(said), fits.AsSpan());
        return fits;
    }

    private static double Score(PageFit found)
    {
        var fit = (Weights.Phrase * found.Closest) + (Weights.Plain * found.Plain);
        return Math.Round(found.IsSame ? Weights.Own + ((1 - Weights.Own) * fit) : fit, 9);
    }
}
