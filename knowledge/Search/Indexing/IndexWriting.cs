using System.Collections.Immutable;
using DxAssistant.Knowledge.Search.Terms;
using Lucene.Net.Analysis.Core;
using Lucene.Net.Documents;
using Lucene.Net.Index;
using Lucene.Net.Search.Similarities;
using Lucene.Net.Store;
using Lucene.Net.Util;

namespace DxAssistant.Knowledge.Search.Indexing;

/// <summary>Writes the index into memory, one document a page. No threads, no files, no clock.</summary>
internal static class IndexWriting
{
    public static readonly Similarity Similarity = new BM25Similarity(1.2f, 0.5f);

    public static IndexReader Write(ImmutableArray<PageTerms> pages, Thesaurus thesaurus)
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
            foreach (var page in pages)
            {
                (plain.Terms, words.Terms) = (page.Plain, page.Words);
                writer.AddDocument(document);
            }
            (plain.Terms, words.Terms) = ([], thesaurus.KnownWords.Order(StringComparer.Ordinal));
            writer.AddDocument(document);
            writer.ForceMerge(1);
            writer.Commit();
        }
        return DirectoryReader.Open(directory);
    }
}
