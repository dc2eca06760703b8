using System.Collections.Immutable;
using Lucene.Net.Analysis.Core;
using Lucene.Net.Documents;
using Lucene.Net.Index;
using Lucene.Net.Search.Similarities;
using Lucene.Net.Store;
using Lucene.Net.Util;

namespace DxAssistant.Knowledge.Search;

/// <summary>Writes the index into memory: one document a phrase, one a page. No threads, no files, no clock.</summary>
internal static class IndexWriting
{
    public static readonly Similarity Similarity = new BM25Similarity(1.2f, 0.5f);

    public static IndexReader Write(ImmutableArray<SearchEntry> entries, ImmutableArray<Phrase> phrases,
        TradeAnalyzer analyzer, Thesaurus thesaurus)
    {
        var directory = new RAMDirectory();
        var settings = new IndexWriterConfig(LuceneVersion.LUCENE_48, new KeywordAnalyzer())
        {
            MergePolicy = new LogDocMergePolicy(),
            MergeScheduler = new SerialMergeScheduler(),
            Similarity = Similarity,
        };
        using (var writer = new IndexWriter(directory, settings))
        {
            for (var i = 0; i < phrases.Length; i++)
                writer.AddDocument(OfPhrase(phrases[i], entries[phrases[i].Page].Kind));
            for (var i = 0; i < entries.Length; i++)
                writer.AddDocument(OfEntry(entries[i], [.. phrases.Where(phrase => phrase.Page == i)], analyzer));
            writer.AddDocument([Terms(Fields.Words, thesaurus.KnownWords.Order(StringComparer.Ordinal))]);
            writer.Commit();
        }
        return DirectoryReader.Open(directory);
    }

    private static Document OfPhrase(Phrase phrase, NodeKind kind) =>
    [
        new StringField(Fields.Kind, kind.ToString(), Field.Store.NO),
        new StringField(Fields.Exact, phrase.Bag.Exact, Field.Store.NO),
        Terms(Fields.Phrase, phrase.Bag.Terms.Keys),
        Terms(Fields.Pairs, phrase.Bag.Pairs),
    ];

    private static Document OfEntry(SearchEntry entry, ImmutableArray<Phrase> phrases, TradeAnalyzer analyzer)
    {
        var body = TermBag.Of(analyzer.Analyze(WordSplitter.Split(entry.Body)));
        return
        [
                new StringField(Fields.Kind, entry.Kind.ToString(), Field.Store.NO),
            Terms(Fields.Title, TermBag.Of(analyzer.Analyze(WordSplitter.Split(entry.Title))).Terms.Keys),
            Terms(Fields.Everything, phrases.SelectMany(phrase => phrase.Bag.Terms.Keys).Concat(body.Terms.Keys)),
            Terms(Fields.Plain, phrases.SelectMany(phrase => phrase.Bag.Plain).Concat(body.Plain)),
            Terms(Fields.EveryPair, phrases.SelectMany(phrase => phrase.Bag.Pairs)),
            Terms(Fields.Words, entry.Phrases.Prepend(entry.Title).Append(entry.Body)
                .SelectMany(text => WordSplitter.Split(text)).Select(word => word.Text).Where(word => word.Length > 2)),
        ];
    }

    private static TextField Terms(string field, IEnumerable<string> terms) => new(field, new TermStream(terms.ToArray()));
}
