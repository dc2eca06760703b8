using Lucene.Net.Index;
using Lucene.Net.Search;
using Lucene.Net.Util;

namespace DxAssistant.Knowledge.Search;

/// <summary>How telling each term and pair is: the inverse document frequency of BM25 over pages.</summary>
internal sealed class Rarity
{
    private readonly Dictionary<string, double> terms;
    private readonly Dictionary<string, double> pairs;
    private readonly Dictionary<string, double> plain;
    private readonly double unknown;

    /// <param name="pages">How many pages the index holds; its other documents do not count.</param>
    public Rarity(IndexReader reader, int pages)
    {
        terms = Read(reader, Fields.Everything, pages);
        plain = Read(reader, Fields.Plain, pages);
        pairs = Read(reader, Fields.EveryPair, pages);
        unknown = Of(0, pages);
    }

    public double OfTerm(string term) => terms.GetValueOrDefault(term, unknown);

    /// <summary>0 for a word that no page has.</summary>
    public double OfPlain(string stem) => plain.GetValueOrDefault(stem);

    public double OfPair(string pair) => pairs.GetValueOrDefault(pair, unknown);

    private static Dictionary<string, double> Read(IndexReader reader, string field, int pages)
    {
        var rarity = new Dictionary<string, double>(StringComparer.Ordinal);
        if (MultiFields.GetTerms(reader, field) is not { } all)
            return rarity;
        var each = all.GetEnumerator();
        while (each.MoveNext())
            rarity[each.Term.Utf8ToString()] = Of(each.DocFreq, pages);
        return rarity;
    }

    private static double Of(double having, int pages) => Math.Log(1 + ((pages - having + 0.5) / (having + 0.5)));
}
