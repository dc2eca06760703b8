using System.Collections.Immutable;
using DxAssistant.Knowledge.Search.Terms;
using Lucene.Net.Analysis.Core;
using Lucene.Net.Documents;
using Lucene.Net.Index;
using Lucene.Net.Search.Similarities;
using Lucene.Net.Store;
using Lucene.Net.Util;

namespace DxAssistant.Knowledge.Search.Indexing;

/// <summary>Writes the index into memory, one document a page. No threads, no files, no clock; step by step.</summary>
internal static class IndexWriting
{
    public static readonly Similarity Similarity = new BM25Similarity(1.2f, 0.5f);

    /// <summary>How many pages are written in one step.</summary>
    private const int Step = 16;

    /// <returns>Null until the last step, which gives the index.</returns>
    public static IEnumerable<IndexReader?> Steps(ImmutableArray<PageTerms> pages, Thesaurus thesaurus)
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
            TermStream plain = new([]), words = new([]);
            Document document = [new TextField(Fields.Plain, plain), new TextField(Fields.Words, words)];
            for (var page = 0; page < pages.Length; page++)
            {
                (plain.Terms, words.Terms) = (pages[page].Plain, pages[page].Words);
                writer.AddDocument(document);
                if (page % Step == 0)
                    yield return null;
            }
            (plain.Terms, words.Terms) = ([], thesaurus.KnownWords.Order(StringComparer.Ordinal));
            writer.AddDocument(document);
            writer.ForceMerge(1);
            writer.Commit();
        }
        yield return DirectoryReader.Open(directory);
    }
}
