using System.Collections.Immutable;
using System.Runtime.InteropServices;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Indexing;

/// <summary>
/// All wordings, and by each term and pair those that have it: how much each shares with what was said.
/// </summary>
internal sealed class Wordings
{
    private readonly Closeness closeness;
    private readonly double[] totals;
    private readonly int[] pageOf;
    private readonly int pages;
    private readonly Dictionary<string, Sharing> byTerm = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<int>> byPair = new(StringComparer.Ordinal);
    private readonly ILookup<string, int> byExact;

    public Wordings(ImmutableArray<Phrase> all, int pages, Closeness closeness)
    {
        (this.closeness, this.pages) = (closeness, pages);
        totals = [.. all.Select(wording => closeness.Total(wording.Bag))];
        pageOf = [.. all.Select(wording => wording.Page)];
        for (var at = 0; at < all.Length; at++)
            Add(at, all[at].Bag);
        byExact = Enumerable.Range(0, all.Length).Where(at => all[at].Bag.Exact.Length > 0)
            .ToLookup(at => all[at].Bag.Exact, StringComparer.Ordinal);
    }

    /// <summary>How well the closest wordings of each page fit what was said, by the place of the page.</summary>
    public Scratch<PageFit> Closest(TermBag said)
    {
        using var shares = new Scratch<double>(totals.Length);
        using var sharing = new Scratch<int>(totals.Length + 1, isCleared: false);
        var shared = new SharedMeaning(shares.AsSpan(), sharing.AsSpan());
        var total = Share(said, ref shared);
        var fits = new Scratch<PageFit>(pages);
        foreach (var wording in shared.Wordings)
        {
            var share = shared.Of(wording);
            fits[pageOf[wording]].Offer(double.IsPositiveInfinity(share)
                ? 1
                : Closeness.Of(share, total, totals[wording]));
        }
        return fits;
    }

    /// <summary>
    /// Writes down how much each wording shares with what was said, and gives the <see cref="Closeness.Total"/> of
    /// that.
    /// </summary>
    private double Share(TermBag said, ref SharedMeaning shared)
    {
        double terms = 0, pairs = 0;
        foreach (var (term, weight) in said.Terms)
        {
            var rarity = closeness.OfTerm(term);
            terms += weight * rarity;
            byTerm.GetValueOrDefault(term)?.Share(weight, rarity, ref shared);
        }
        foreach (var pair in said.Pairs)
        {
            var rarity = closeness.OfPair(pair);
            pairs += rarity;
            foreach (var wording in CollectionsMarshal.AsSpan(byPair.GetValueOrDefault(pair)))
                shared.Add(wording, rarity);
        }
        foreach (var wording in byExact[said.Exact])
            shared.Add(wording, double.PositiveInfinity);
        return terms + pairs;
    }

    private void Add(int at, TermBag bag)
    {
        foreach (var (term, weight) in bag.Terms)
            Of(byTerm, term).Add(at, weight);
        foreach (var pair in bag.Pairs)
            Of(byPair, pair).Add(at);
    }

    private static T Of<T>(Dictionary<string, T> all, string key) where T : new()
    {
        ref var one = ref CollectionsMarshal.GetValueRefOrAddDefault(all, key, out _);
        return one ??= new T();
    }
}
