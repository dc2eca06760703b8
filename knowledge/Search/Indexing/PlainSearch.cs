using Lucene.Net.Analysis;
using Lucene.Net.Analysis.En;
using Lucene.Net.Analysis.TokenAttributes;
using Lucene.Net.Documents;
using Lucene.Net.Index;
using Lucene.Net.Search;
using Lucene.Net.Search.Similarities;
using Lucene.Net.Store;
using Lucene.Net.Util;

namespace DxAssistant.Knowledge.Search.Indexing;

/// <summary>
/// What the stock English analyzer and BM25 make of the same fault pages: the mark that the matcher has to beat.
/// </summary>
public sealed class PlainSearch : IDisposable
{
    private const int MostFaults = 5;
    private readonly Analyzer analyzer = new EnglishAnalyzer(LuceneVersion.LUCENE_48);
    private readonly IndexSearcher searcher;

    public PlainSearch(IEnumerable<SearchEntry> entries)
    {
        var directory = new RAMDirectory();
        var settings = new IndexWriterConfig(LuceneVersion.LUCENE_48, analyzer)
        {
            MergeScheduler = new SerialMergeScheduler(),
        };
        using (var writer = new IndexWriter(directory, settings))
        {
            foreach (var entry in entries.Where(entry => entry.Kind == NodeKind.Fault))
                writer.AddDocument([new StringField("id", entry.Id, Field.Store.YES),
                    new TextField("text", TextOf(entry), Field.Store.NO)]);
        }
        searcher = new IndexSearcher(DirectoryReader.Open(directory)) { Similarity = new BM25Similarity() };
    }

    /// <summary>The ids of the faults found, best first.</summary>
    public IReadOnlyList<string> Faults(string text)
    {
        var query = new BooleanQuery();
        foreach (var term in Terms(text).Distinct().Take(BooleanQuery.MaxClauseCount))
            query.Add(new TermQuery(new Term("text", term)), Occur.SHOULD);
        return [.. searcher.Search(query, MostFaults).ScoreDocs.Select(hit => searcher.Doc(hit.Doc).Get("id"))];
    }

    public void Dispose() => analyzer.Dispose();

    private static string TextOf(SearchEntry entry) =>
        string.Join('\n', entry.Phrases.Prepend(entry.Title).Append(entry.Body));

    private List<string> Terms(string text)
    {
        using var stream = analyzer.GetTokenStream("text", text);
        var term = stream.GetAttribute<ICharTermAttribute>();
        var terms = new List<string>();
        stream.Reset();
        while (stream.IncrementToken())
            terms.Add(term.ToString());
        stream.End();
        return terms;
    }
}
