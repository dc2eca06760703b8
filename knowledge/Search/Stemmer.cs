using System.Collections.Immutable;
using Lucene.Net.Analysis.En;
using Lucene.Net.Analysis.TokenAttributes;

namespace DxAssistant.Knowledge.Search;

/// <summary>Words to their stems, by Porter's algorithm.</summary>
internal static class Stemmer
{
    public static ImmutableArray<string> StemAll(IReadOnlyList<string> words)
    {
        using var stream = new PorterStemFilter(new TermStream(words));
        var term = stream.GetAttribute<ICharTermAttribute>();
        var stems = ImmutableArray.CreateBuilder<string>(words.Count);
        stream.Reset();
        while (stream.IncrementToken())
            stems.Add(term.ToString());
        stream.End();
        return stems.MoveToImmutable();
    }
}
