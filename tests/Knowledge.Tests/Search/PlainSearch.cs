using DxAssistant.Knowledge.Search;
using Lucene.Net.Analysis;
using Lucene.Net.Documents;
using Lucene.Net.Index;
using Lucene.Net.Search;
using Lucene.Net.Search.Similarities;
using Lucene.Net.Store;
using Lucene.Net.Util;

namespace DxAssistant.Knowledge.Tests.Search;

/// <summary>What a stock analyzer and BM25 make of the same fault pages: the mark that the matcher has to beat.</summary>
internal sealed class PlainSearch
{
    private readonly Analyzer analyzer;
    private readonly IndexSearcher searcher;

    public PlainSearch(Analyzer analyzer, IEnumerable<SearchEntry> entries)
    {
        this.analyzer = analyzer;
        var directory = new RAMDirectory();
        using (var writer = new IndexWriter(directory, new IndexWriterConfig(LuceneVersion.LUCENE_48, analyzer) { MergeScheduler = new SerialMergeScheduler() }))
        {
            foreach (var entry in entries.Where(entry => entry.Kind == NodeKind.Fault))
                writer.AddDocument([new StringField("id", entry.Id, Field.Store.YES), new TextField("text", string.Join('\n', entry.Phrases.Prepend(entry.Title).Append(entry.Body)), Field.Store.NO)]);
        }
        searcher = new IndexSearcher(DirectoryReader.Open(directory)) { Similarity = new BM25Similarity() };
    }

    public IReadOnlyList<string> Faults(string text)
    {
        var query = new BooleanQuery();
        foreach (var term in Terms(text).Distinct())
            query.Add(new TermQuery(new Term("text", term)), Occur.SHOULD);
        return [.. searcher.Search(query, 5).ScoreDocs.Select(hit => searcher.Doc(hit.Doc).Get("id"))];
    }

    private List<string> Terms(string text)
    {
        using var stream = analyzer.GetTokenStream("text", text);
        var term = stream.GetAttribute<Lucene.Net.Analysis.TokenAttributes.ICharTermAttribute>();
        var terms = new List<string>();
        stream.Reset();
        while (stream.IncrementToken())
            terms.Add(term.ToString());
        stream.End();
        return terms;
    }
}
