using System.Collections.Immutable;
using DxAssistant.Knowledge.Search.Indexing;

namespace DxAssistant.Knowledge.Search.Learning;

/// <summary>Learns from wordings in groups which features tell of which group, and which speak against it.</summary>
internal sealed class WordingModel
{
    /// <summary>More groups than this are told apart by the search alone: learning grows with wordings times groups.</summary>
    private const int MostGroups = 512;

    private readonly ImmutableArray<int> groups;
    private readonly float[] rarity;
    private readonly LearntWeights? weights;

    /// <param name="wordings">The wordings to learn from, in the order of learning.</param>
    /// <param name="features">How many features there are in all.</param>
    /// <param name="groupOf">The group of a wording: a page, or a kind of message.</param>
    public WordingModel(
        ImmutableArray<(Phrase Wording, (int Number, float Weight)[] Features)> wordings, int features, Func<Phrase, int> groupOf)
    {
        groups = [.. wordings.Select(wording => groupOf(wording.Wording)).Distinct().Order()];
        rarity = groups.Length > MostGroups ? [] : Rarity(wordings.SelectMany(wording => wording.Features), features, wordings.Length);
        if (groups.Length <= MostGroups)
            weights = new LearntWeights([.. wordings.Select(wording => (groups.BinarySearch(groupOf(wording.Wording)), Shares(wording.Features)))], features, groups.Length);
    }

    /// <summary>By group the probability that a wording is one of its own; empty if nothing was learnt.</summary>
    public Dictionary<int, double> Judge((int Number, float Weight)[] said)
    {
        var judged = weights?.Judge(Shares(said)) ?? [];
        var byGroup = new Dictionary<int, double>(judged.Length);
        for (var at = 0; at < judged.Length; at++)
            byGroup.Add(groups[at], judged[at]);
        return byGroup;
    }

    /// <summary>The features of these wordings with their shares of the meaning, as the sides of a vector of length 1.</summary>
    private (int Feature, float Share)[] Shares((int Number, float Weight)[] said)
    {
        var known = said.Where(feature => rarity[feature.Number] > 0)
            .Select(feature => (feature.Number, Value: feature.Weight * rarity[feature.Number])).ToArray();
        var length = MathF.Sqrt(known.Sum(feature => feature.Value * feature.Value));
        return [.. known.Select(feature => (feature.Number, length > 0 ? feature.Value / length : 0))];
    }

    /// <summary>How telling each feature is; 0 for one that no wording has. Rounded, because the logarithm may differ in its
    /// last bit between systems.</summary>
    private static float[] Rarity(IEnumerable<(int Number, float Weight)> used, int features, int wordings)
    {
        var having = new int[features];
        foreach (var (number, _) in used)
            having[number]++;
        return [.. having.Select(count => count == 0 ? 0 : (float)Math.Round(Math.Log(1 + ((double)wordings / count)), 4))];
    }
}
