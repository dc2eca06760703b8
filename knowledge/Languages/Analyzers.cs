using System.Collections.Immutable;
using Lucene.Net.Analysis;
using Lucene.Net.Analysis.De;
using Lucene.Net.Analysis.Es;
using Lucene.Net.Analysis.Fr;
using Lucene.Net.Analysis.It;
using Lucene.Net.Analysis.Pt;
using Lucene.Net.Analysis.Util;
using Lucene.Net.Util;

namespace DxAssistant.Knowledge.Languages;

/// <summary>
/// The search analyzers by the name a language page gives. Stop words are kept: "no" and "sin" tell something.
/// </summary>
internal static class Analyzers
{
    public static ImmutableArray<string> Names { get; } = ["french", "german", "italian", "portuguese", "spanish"];

    public static Analyzer Named(string name) => name switch
    {
        "french" => new FrenchAnalyzer(LuceneVersion.LUCENE_48, CharArraySet.Empty),
        "german" => new GermanAnalyzer(LuceneVersion.LUCENE_48, CharArraySet.Empty),
        "italian" => new ItalianAnalyzer(LuceneVersion.LUCENE_48, CharArraySet.Empty),
        "portuguese" => new PortugueseAnalyzer(LuceneVersion.LUCENE_48, CharArraySet.Empty),
        "spanish" => new SpanishAnalyzer(LuceneVersion.LUCENE_48, CharArraySet.Empty),
        _ => throw new ArgumentOutOfRangeException(nameof(name), name, "no such analyzer"),
    };
}
