using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Search.Indexing;

/// <summary>How telling each term and pair is: the inverse document frequency of BM25 over pages.</summary>
internal sealed class Rarity
{
    private readonly Dictionary<string, double> terms;
    private readonly Dictionary<string, double> pairs;
    private readonly Dictionary<string, double> plain;
    private readonly double unknown;

    public Rarity(ImmutableArray<PageTerms> pages)
    {
        terms = Count(pages.Select(page => page.Terms), pages.Length);
        pairs = Count(pages.Select(page => page.Pairs), pages.Length);
        plain = Count(pages.Select(page => page.Plain.Distinct(StringComparer.Ordinal)), pages.Length);
        unknown = Of(0, pages.Length);
    }

    public double OfTerm(string term) => terms.GetValueOrDefault(term, unknown);

    /// <summary>0 for a word that no page has.</summary>
    public double OfPlain(string stem) => plain.GetValueOrDefault(stem);

    public double OfPair(string pair) => pairs.GetValueOrDefault(pair, unknown);

    private static Dictionary<string, double> Count(IEnumerable<IEnumerable<string>> pages, int all)
    {
        var having = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach (var term in pages.SelectMany(page => page))
            having[term] = having.GetValueOrDefault(term) + 1;
        foreach (var term in having.Keys)
            having[term] = Of(having[term], all);
        return having;
    }

    private static double Of(double having, int pages) => Math.Log(1 + ((pages - having + 0.5) / (having + 0.5)));
}
