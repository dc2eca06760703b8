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

    /// <summary>How probable it is that a wording is of each group.</summary>
    public Judged Judge((int Number, float Weight)[] said) => weights is null ? Judged.Nothing : new Judged(groups, weights.Judge(Shares(said)));

    /// <summary>The features of these wordings with their shares of the meaning, as the sides of a vector of length 1.</summary>
    private (int Feature, float Share)[] Shares((int Number, float Weight)[] said)
    {
        var shares = new (int Feature, float Share)[said.Count(feature => rarity[feature.Number] > 0)];
        var known = 0;
        double squares = 0;
        foreach (var (number, weight) in said)
        {
            if (rarity[number] <= 0)
                continue;
            var value = weight * rarity[number];
            squares += value * value;
            shares[known++] = (number, value);
        }
        var length = MathF.Sqrt((float)squares);
        foreach (ref var share in shares.AsSpan())
            share.Share = length > 0 ? share.Share / length : 0;
        return shares;
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
