using System.Collections.Immutable;
using DxAssistant.Knowledge.Search.Learning;
using DxAssistant.Knowledge.Search.Terms;
using Lucene.Net.Index;
using Lucene.Net.Search;

namespace DxAssistant.Knowledge.Search.Indexing;

/// <summary>Makes a search index in steps of about the same work, so that a program of one thread can do other things
/// between them.</summary>
internal sealed class IndexMaking
{
    /// <summary>How many wordings are read or numbered in one step.</summary>
    private const int SomeWordings = 250;

    /// <summary>How many pages are put together in one step.</summary>
    private const int SomePages = 16;

    private readonly Thesaurus thesaurus;
    private readonly TradeAnalyzer analyzer;
    private readonly ImmutableArray<SearchEntry> entries;
    private readonly List<Phrase> all = [];
    private readonly List<PageTerms> terms = [];
    private readonly Features features = new();
    private readonly List<(Phrase Wording, (int Number, float Weight)[] Features)> learnt = [];
    private readonly Dictionary<NodeKind, WordingModel> models = [];
    private ImmutableArray<Phrase> phrases;
    private IndexReader? reader;
    private Closeness? closeness;
    private Wordings? wordings;
    private WordingModel? intentions;

    private IndexMaking(IEnumerable<SearchEntry> pages, IEnumerable<SynonymGroup> glossary)
    {
        thesaurus = new Thesaurus(glossary);
        analyzer = new TradeAnalyzer(thesaurus);
        entries = [.. pages.OrderBy(entry => entry.Kind).ThenBy(entry => entry.Id, StringComparer.Ordinal)];
    }

    /// <returns>Null until the last step, which gives the index.</returns>
    public static IEnumerable<SearchIndex?> Steps(IEnumerable<SearchEntry> pages, IEnumerable<SynonymGroup> glossary)
    {
        var making = new IndexMaking(pages, glossary);
        Func<IEnumerable<object?>>[] stages =
            [making.Read, making.PutTogether, making.Write, making.Weigh, making.Number, making.LearnPages,
                making.LearnIntentions];
        foreach (var _ in stages.SelectMany(stage => stage()))
            yield return null;
        yield return making.Index();
    }

    private IEnumerable<object?> Read()
    {
        foreach (var _ in Counted(entries.SelectMany(PhrasesOf), SomeWordings, all))
            yield return null;
        phrases = [.. all.Where(phrase => !phrase.Bag.IsEmpty)];
    }

    private IEnumerable<object?> PutTogether()
    {
        var byPage = phrases.ToLookup(phrase => phrase.Page);
        return Counted(
            entries.Select((entry, page) => PageTerms.Of([.. byPage[page]], WordSplitter.Split(entry.Body), analyzer)),
            SomePages, terms);
    }

    private IEnumerable<object?> Write() =>
        IndexWriting.Steps([.. terms], thesaurus).Select(written => reader = written);

    private IEnumerable<object?> Weigh()
    {
        closeness = new Closeness(new Rarity([.. terms]));
        yield return null;
        wordings = new Wordings(phrases, entries.Length, closeness);
        yield return null;
    }

    private IEnumerable<object?> Number() => Counted(
        phrases.OrderBy(phrase => LearningOrder.PlaceOf(phrase.Words))
            .Select(phrase => (phrase, features.Learn(phrase.Bag))), SomeWordings, learnt);

    private IEnumerable<object?> LearnPages()
    {
        foreach (var kind in learnt.GroupBy(wording => entries[wording.Wording.Page].Kind)
            .Where(kind => kind.Key is NodeKind.Fault or NodeKind.Symptom or NodeKind.Refusal))
        {
            foreach (var model in WordingModel.Steps([.. kind], features.Count, wording => wording.Page))
                yield return model is null ? null : models[kind.Key] = model;
        }
    }

    private IEnumerable<object?> LearnIntentions() =>
        WordingModel.Steps([.. learnt], features.Count, wording => (int)Intended(entries[wording.Page].Kind))
            .Select(model => intentions = model);

    private SearchIndex Index()
    {
        var plain = new PlainScores(new IndexSearcher(reader!) { Similarity = IndexWriting.Similarity });
        return new SearchIndex(entries, new IndexParts(
            analyzer, phrases, [.. all.Where(phrase => phrase.Bag.IsEmpty)], plain, new Vocabulary(reader!, thesaurus),
            closeness!, wordings!, features, models, intentions!));
    }

    /// <summary>Collects all of a row, and gives something after each so many.</summary>
    private static IEnumerable<object?> Counted<T>(IEnumerable<T> row, int each, List<T> collected)
    {
        foreach (var one in row)
        {
            collected.Add(one);
            if (collected.Count % each == 0)
                yield return null;
        }
    }

    private static NodeKind Intended(NodeKind kind) =>
        kind is NodeKind.OffTopic or NodeKind.Refusal or NodeKind.Harmless ? kind : NodeKind.Fault;

    private IEnumerable<Phrase> PhrasesOf(SearchEntry entry, int page) =>
        entry.Phrases.Prepend(entry.Title)
            .Select(text => WordSplitter.Split(text))
            .Select(words => new Phrase(page, words, TermBag.Of(analyzer.Analyze(words))));
}
