using System.Collections.Immutable;
using DxAssistant.Graph;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Learning;

/// <summary>The order in which wordings are learnt from: mixed, and each wording's place of its own making.</summary>
/// <remarks>
/// Gradient descent remembers the order. Were it drawn over all wordings together, one wording more would shuffle the
/// rest and move answers that have nothing to do with it.
/// </remarks>
internal static class LearningOrder
{
    private const ulong Mixing = 0x9E3779B97F4A7C15;

    /// <summary>A number that only the words decide, mixed once more.</summary>
    public static ulong PlaceOf(ImmutableArray<Word> words)
    {
        var hash = StableHash.Of(words.SelectMany(word => word.Text + " "));
        hash = (hash ^ (hash >> 32)) * Mixing;
        return hash ^ (hash >> 29);
    }
}
