using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Search;

/// <summary>Numbers for the features of all wordings, in the order of their first use.</summary>
internal sealed class FeatureNumbers
{
    private readonly Dictionary<string, int> numbers = new(StringComparer.Ordinal);

    /// <param name="wordings">All wordings there are.</param>
    public FeatureNumbers(ImmutableArray<Phrase> wordings) =>
        All = [.. wordings.Select(wording => (wording, Features.Of(wording.Bag).Select(Numbered).ToArray()))];

    /// <summary>Every wording with its features.</summary>
    public ImmutableArray<(Phrase Wording, (int Number, float Weight)[] Features)> All { get; }

    public int Count => numbers.Count;

    /// <summary>The features of what was said that some wording has.</summary>
    public (int Number, float Weight)[] Known(TermBag said) =>
    [
        .. Features.Of(said).Where(feature => numbers.ContainsKey(feature.Name))
            .Select(feature => (numbers[feature.Name], feature.Weight)),
    ];

    private (int Number, float Weight) Numbered((string Name, float Weight) feature)
    {
        if (!numbers.TryGetValue(feature.Name, out var number))
            numbers.Add(feature.Name, number = numbers.Count);
        return (number, feature.Weight);
    }
}
