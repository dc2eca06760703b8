using System.Collections.Immutable;
using DxAssistant.Knowledge.Search.Indexing;

namespace DxAssistant.Knowledge.Search.Learning;

/// <summary>Learns from wordings in groups which features tell of which group, and which speak against it.</summary>
internal sealed class WordingModel
{
    /// <summary>
    /// More groups than this are told apart by the search alone: learning grows with wordings times groups.
    /// </summary>
    private const int MostGroups = 512;

    private readonly ImmutableArray<int> groups;
    private readonly float[] rarity;
    private readonly LearntWeights? weights;

    private WordingModel(ImmutableArray<int> groups, float[] rarity, LearntWeights? weights) =>
        (this.groups, this.rarity, this.weights) = (groups, rarity, weights);

    /// <summary>Learns step by step.</summary>
    /// <param name="wordings">The wordings to learn from, in the order of learning.</param>
    /// <param name="features">How many features there are in all.</param>
    /// <param name="groupOf">The group of a wording: a page, or a kind of message.</param>
    /// <returns>Null until the last step, which gives the model.</returns>
    public static IEnumerable<WordingModel?> Steps(
        ImmutableArray<(Phrase Wording, (int Number, float Weight)[] Features)> wordings, int features,
        Func<Phrase, int> groupOf)
    {
        ImmutableArray<int> groups = [.. wordings.Select(wording => groupOf(wording.Wording)).Distinct().Order()];
        var (rarity, weights) = (Array.Empty<float>(), (LearntWeights?)null);
        if (groups.Length <= MostGroups)
        {
            rarity = Rarity(wordings.SelectMany(wording => wording.Features), features, wordings.Length);
            weights = new LearntWeights(
                [.. wordings.Select(wording => (groups.BinarySearch(groupOf(wording.Wording)),
                    Shares(wording.Features, rarity)))], features, groups.Length);
            foreach (var _ in weights.Learn())
                yield return null;
        }
        yield return new WordingModel(groups, rarity, weights);
    }

    /// <summary>How probable it is that a wording is of each group.</summary>
    public Judged Judge((int Number, float Weight)[] said) =>
        weights is null ? Judged.Nothing : new Judged(groups, weights.Judge(Shares(said, rarity)));

    /// <summary>
    /// The features of these wordings with their shares of the meaning, as the sides of a vector of length 1.
    /// </summary>
    private static (int Feature, float Share)[] Shares((int Number, float Weight)[] said, float[] rarity)
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

    /// <summary>
    /// How telling each feature is; 0 for one that no wording has. Rounded, because the logarithm may differ in its
    /// last bit between systems.
    /// </summary>
    private static float[] Rarity(IEnumerable<(int Number, float Weight)> used, int features, int wordings)
    {
        var having = new int[features];
        foreach (var (number, _) in used)
            having[number]++;
        return [.. having.Select(count => count == 0
            ? 0
            : (float)Math.Round(Math.Log(1 + ((double)wordings / count)), 4))];
    }
}
