using System.Collections.Immutable;

namespace DxAssistant.Conversation.Understanding.Whole;

/// <summary>What doubt does to what is told: it is pulled towards saying nothing.</summary>
internal static class Doubts
{
    // How often something told with doubt is right; common practice, no source.
    private const double TrustInDoubt = 0.7;

    public static double ConfidenceOf(bool doubtful) => doubtful ? TrustInDoubt : 1;

    /// <summary>How well an outcome that was told fits each outcome of its check.</summary>
    public static ImmutableArray<double> Weigh(int place, int count, bool doubtful)
    {
        double even = (1 - ConfidenceOf(doubtful)) / count;
        return [.. Enumerable.Range(0, count).Select(index => even + (index == place ? ConfidenceOf(doubtful) : 0))];
    }
}
