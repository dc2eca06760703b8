using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Understanding.Whole;

/// <summary>What doubt does to what is told: it is pulled towards saying nothing.</summary>
internal static class Doubts
{
    public static double ConfidenceOf(bool doubtful, WalkSettings settings) => doubtful ? settings.DoubtTrusted : 1;

    /// <summary>How well an outcome that was told fits each outcome of its check.</summary>
    public static ImmutableArray<double> Weigh(int place, int count, double confidence)
    {
        double even = (1 - confidence) / count;
        return [.. Enumerable.Range(0, count).Select(index => even + (index == place ? confidence : 0))];
    }
}
