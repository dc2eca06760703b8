using System.Collections.Immutable;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Learning;

/// <summary>The order in which wordings are learnt from: mixed, and each wording's place of its own making.</summary>
/// <remarks>
/// Gradient descent remembers the order. Were it drawn over all wordings together, one wording more would shuffle the rest
/// and move answers that have nothing to do with it.
/// </remarks>
internal static class LearningOrder
{
    private const ulong Start = 14695981039346656037;
    private const ulong Prime = 1099511628211;
    private const ulong Mixing = 0x9E3779B97F4A7C15;

    /// <summary>A number that only the words decide: FNV-1a (IETF draft-eastlake-fnv), mixed once more.</summary>
    public static ulong PlaceOf(ImmutableArray<Word> words)
    {
        var hash = Start;
        foreach (var word in words)
        {
            foreach (var letter in word.Text)
                hash = (hash ^ letter) * Prime;
            hash = (hash ^ ' ') * Prime;
        }
        hash = (hash ^ (hash >> 32)) * Mixing;
        return hash ^ (hash >> 29);
    }
}
