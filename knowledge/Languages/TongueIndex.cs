using System.Collections.Immutable;
using DxAssistant.Knowledge.Search;
using DxAssistant.Knowledge.Search.Indexing;
using Lucene.Net.Analysis.Core;
using Lucene.Net.Documents;
using Lucene.Net.Index;
using Lucene.Net.Search;
using Lucene.Net.Store;
using Lucene.Net.Util;

namespace DxAssistant.Knowledge.Languages;

/// <summary>The wordings of one language and one kind of page, each a document of its terms.</summary>
internal sealed class TongueIndex
{
    private const string Field = "term";
    private const int Looked = 50;

    private readonly ImmutableArray<(string Page, ImmutableArray<string> Terms)> wordings;
    private readonly IndexSearcher searcher;

    public TongueIndex(TongueTerms terms, IEnumerable<(string Page, IEnumerable<string> Wordings)> pages)
    {
        wordings =
        [
            .. pages.SelectMany(page => page.Wordings.Select(wording => (page.Page, Terms: terms.Of(wording))))
                .Where(wording => !wording.Terms.IsEmpty),
        ];
        searcher = new IndexSearcher(Write());
    }

    /// <summary>The pages whose wordings come near, best first; 1 is the very wording.</summary>
    public ImmutableArray<MatchCandidate> Find(ImmutableArray<string> said)
    {
        if (said.IsEmpty || wordings.IsEmpty) return [];
        var query = new BooleanQuery();
        foreach (string term in said.Take(60)) query.Add(new TermQuery(new Term(Field, term)), Occur.SHOULD);
        return
        [
            .. searcher.Search(query, Looked).ScoreDocs.Select(found => wordings[found.Doc])
                .GroupBy(wording => wording.Page, wording => Closeness(said, wording.Terms), StringComparer.Ordinal)
                .Select(page => new MatchCandidate(page.Key, Math.Round(page.Max(), 6)))
                .OrderByDescending(found => found.Score).ThenBy(found => found.Id, StringComparer.Ordinal),
        ];
    }

    // The weight of the shared terms: of the wording above all, and of what was said.
    private double Closeness(ImmutableArray<string> said, ImmutableArray<string> wording)
    {
        double shared = wording.Where(term => said.Contains(term)).Sum(Weight);
        return (0.6 * shared / wording.Sum(Weight)) + (0.4 * shared / said.Sum(Weight));
    }

    private double Weight(string term) =>
        Math.Log(1 + ((double)wordings.Length / (1 + searcher.IndexReader.DocFreq(new Term(Field, term)))));

    private DirectoryReader Write()
    {
        var directory = new RAMDirectory();
        var settings = new IndexWriterConfig(LuceneVersion.LUCENE_48, new KeywordAnalyzer())
        {
            MergePolicy = new LogDocMergePolicy(),
            MergeScheduler = new SerialMergeScheduler(),
        };
        using (var writer = new IndexWriter(directory, settings))
        {
            foreach ((string _, ImmutableArray<string> terms) in wordings)
            {
                var document = new Document();
                foreach (string term in terms)
                    document.Add(new StringField(Field, term, Lucene.Net.Documents.Field.Store.NO));
                writer.AddDocument(document);
            }

            writer.Commit();
        }

        return DirectoryReader.Open(directory);
    }
}
