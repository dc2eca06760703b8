using System.Collections.Immutable;
using System.Runtime.InteropServices;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Indexing;

/// <summary>All wordings, and by each term and pair those that have it: how much each shares with what was said.</summary>
internal sealed class Wordings
{
    /// <summary>How many wordings of one page count.</summary>
    private const int Crowd = 3;

    private readonly Closeness closeness;
    private readonly double[] totals;
    /// <summary>The first wording of each page, and one more place at the end.</summary>
    private readonly int[] firsts;
    private readonly Dictionary<string, Sharing> byTerm = new(StringComparer.Ordinal);
    private readonly Dictionary<string, List<int>> byPair = new(StringComparer.Ordinal);
    private readonly ILookup<string, int> byExact;

    /// <param name="all">In the order of their pages.</param>
    public Wordings(ImmutableArray<Phrase> all, int pages, Closeness closeness)
    {
        this.closeness = closeness;
        totals = [.. all.Select(wording => closeness.Total(wording.Bag))];
        firsts = new int[pages + 1];
        foreach (var wording in all)
            firsts[wording.Page + 1]++;
        for (var page = 0; page < pages; page++)
            firsts[page + 1] += firsts[page];
        for (var at = 0; at < all.Length; at++)
            Add(at, all[at].Bag);
        byExact = Enumerable.Range(0, all.Length).Where(at => all[at].Bag.Exact.Length > 0).ToLookup(at => all[at].Bag.Exact, StringComparer.Ordinal);
    }

    /// <summary>How well the closest wording of each page fits what was said, by the place of the page.</summary>
    public PageFit[] Closest(TermBag said)
    {
        using var shared = new Scratch(totals.Length);
        Share(said, shared.AsSpan());
        var total = closeness.Total(said);
        var fits = new PageFit[firsts.Length - 1];
        for (var page = 0; page < fits.Length; page++)
            fits[page] = new PageFit(Closest(page, shared.AsSpan(), total), 0);
        return fits;
    }

    /// <summary>How much each wording shares with what was said.</summary>
    private void Share(TermBag said, Span<double> shared)
    {
        foreach (var (term, weight) in said.Terms)
        {
            var rarity = closeness.OfTerm(term);
            byTerm.GetValueOrDefault(term)?.Share(weight, rarity, shared);
        }
        foreach (var pair in said.Pairs)
        {
            var rarity = closeness.OfPair(pair);
            foreach (var wording in CollectionsMarshal.AsSpan(byPair.GetValueOrDefault(pair)))
                shared[wording] += rarity;
        }
        foreach (var wording in byExact[said.Exact])
            shared[wording] = double.PositiveInfinity;
    }

    /// <summary>The score of a page's closest wording, drawn a little towards the mean of the best few.</summary>
    /// <param name="said">The <see cref="Closeness.Total"/> of what was said.</param>
    private ClosestWording Closest(int page, ReadOnlySpan<double> shared, double said)
    {
        double best = 0, second = 0, third = 0;
        for (var at = firsts[page]; at < firsts[page + 1]; at++)
        {
            if (shared[at] == 0)
                continue;
            var score = double.IsPositiveInfinity(shared[at]) ? 1 : Closeness.Of(shared[at], said, totals[at]);
            if (score > best)
                (best, second, third) = (score, best, second);
            else if (score > second)
                (second, third) = (score, second);
            else
                third = Math.Max(third, score);
        }
        return new ClosestWording(((1 - Weights.Crowd) * best) + (Weights.Crowd * (best + second + third) / Crowd), best >= 1);
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
