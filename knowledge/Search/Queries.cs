using Lucene.Net.Index;
using Lucene.Net.Search;

namespace DxAssistant.Knowledge.Search;

/// <summary>Questions to the index, built term by term; what people type never meets a query language.</summary>
internal static class Queries
{
    public static Query Phrases(TermBag said, NodeKind kind)
    {
        var query = new BooleanQuery(true);
        AddTerms(query, said, Fields.Phrase, 1);
        AddPairs(query, said, Fields.Pairs, 1);
        query.Add(new TermQuery(new Term(Fields.Exact, said.Exact)), Occur.SHOULD);
        return OfKind(query, kind);
    }

    public static Query Pages(TermBag said, NodeKind kind)
    {
        var query = new BooleanQuery(true);
        AddTerms(query, said, Fields.Everything, Weights.PageBoost);
        AddTerms(query, said, Fields.Title, Weights.TitleBoost);
        AddPairs(query, said, Fields.EveryPair, Weights.PairBoost);
        return OfKind(query, kind);
    }

    /// <summary>Pages by the words as said, synonyms apart.</summary>
    public static Query Plain(TermBag said, NodeKind kind)
    {
        var query = new BooleanQuery(true);
        foreach (var stem in said.Plain.Order(StringComparer.Ordinal))
            Add(query, Fields.Plain, stem, 1);
        return OfKind(query, kind);
    }

    private static FilteredQuery OfKind(BooleanQuery what, NodeKind kind) =>
        new(what, new QueryWrapperFilter(new TermQuery(new Term(Fields.Kind, kind.ToString()))));

    private static void AddTerms(BooleanQuery query, TermBag said, string field, float boost)
    {
        foreach (var (term, weight) in said.Terms)
            Add(query, field, term, (float)weight * boost);
    }

    private static void AddPairs(BooleanQuery query, TermBag said, string field, float boost)
    {
        foreach (var pair in said.Pairs)
            Add(query, field, pair, boost);
    }

    private static void Add(BooleanQuery query, string field, string term, float boost)
    {
        if (query.Clauses.Count < BooleanQuery.MaxClauseCount)
            query.Add(new TermQuery(new Term(field, term)) { Boost = boost }, Occur.SHOULD);
    }
}
