using DxAssistant.Knowledge.Search.Terms;
using Lucene.Net.Index;
using Lucene.Net.Search;

namespace DxAssistant.Knowledge.Search.Indexing;

/// <summary>Questions to the index, built term by term; what people type never meets a query language.</summary>
internal static class Queries
{
    /// <summary>Pages by the words as said, synonyms apart.</summary>
    public static Query Plain(TermBag said)
    {
        var query = new BooleanQuery(true);
        foreach (var stem in said.Plain.Order(StringComparer.Ordinal).Take(BooleanQuery.MaxClauseCount))
            query.Add(new TermQuery(new Term(Fields.Plain, stem)), Occur.SHOULD);
        return query;
    }
}
