using System.Runtime.InteropServices;

namespace DxAssistant.Knowledge.Search.Indexing;

/// <summary>The wordings that have one term, by how much of their meaning it is.</summary>
internal sealed class Sharing
{
    private readonly List<int> whole = [];
    private readonly List<(int Wording, double Weight)> aside = [];

    /// <param name="weight">1, or less for a term that is said aside.</param>
    public void Add(int wording, double weight)
    {
        if (weight >= 1)
            whole.Add(wording);
        else
            aside.Add((wording, (float)weight));
    }

    /// <summary>Adds to each wording what it shares of a term that was said with a weight.</summary>
    public void Share(double weight, double rarity, ref SharedMeaning shared)
    {
        var all = Math.Min(weight, 1) * rarity;
        foreach (var wording in CollectionsMarshal.AsSpan(whole))
            shared.Add(wording, all);
        foreach (var (wording, also) in CollectionsMarshal.AsSpan(aside))
            shared.Add(wording, Math.Min(weight, also) * rarity);
    }
}
