using System.Collections.Frozen;
using System.Collections.Immutable;
using Lucene.Net.Analysis.En;
using Lucene.Net.Analysis.TokenAttributes;

namespace DxAssistant.Knowledge.Search.Terms;

/// <summary>Words to their stems, by Porter's algorithm.</summary>
internal static class Stemmer
{
    /// <summary>
    /// Words that only look like others of their stem: "quite" and "quit", "several" and "severed", "house" and
    /// "housing".
    /// </summary>
    private static readonly FrozenDictionary<string, string> Apart =
        new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["quite"] = "quite", ["several"] = "several", ["severe"] = "severe", ["severely"] = "severe",
        ["house"] = "house", ["houses"] = "house",
        ["evenings"] = "evening", ["reversing"] = "reversing", ["barely"] = "barely", ["cleaning"] = "cleaning",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    // A stream costs far more to make than to use, and serves one caller at a time: each thread keeps its own.
    [ThreadStatic]
    private static TermStream? row;
    [ThreadStatic]
    private static PorterStemFilter? stemming;

    public static ImmutableArray<string> StemAll(IReadOnlyList<string> words)
    {
        row ??= new TermStream([]);
        stemming ??= new PorterStemFilter(row);
        row.Terms = words;
        var term = stemming.GetAttribute<ICharTermAttribute>();
        var stems = ImmutableArray.CreateBuilder<string>(words.Count);
        stemming.Reset();
        while (stemming.IncrementToken())
            stems.Add(Apart.GetValueOrDefault(words[stems.Count]) ?? SameOr(words[stems.Count], term));
        row.Terms = [];
        return stems.MoveToImmutable();
    }

    /// <summary>Most words are their own stems: no need to keep them twice.</summary>
    private static string SameOr(string word, ICharTermAttribute stem) =>
        word.AsSpan().SequenceEqual(stem.Buffer.AsSpan(0, stem.Length)) ? word : stem.ToString();
}
