using System.Runtime.InteropServices;

namespace DxAssistant.Knowledge.Search.Indexing;

/// <summary>
/// The best of the pages that are offered in their order, so many at most; of pages that fit alike the first ones.
/// </summary>
internal sealed class BestPages(int most)
{
    private readonly List<ScoredPage> kept = [];
    private double worst = double.NegativeInfinity;

    public void Offer(int page, double score)
    {
        if (score <= worst)
            return;
        kept.Add(new ScoredPage(page, score));
        if (kept.Count == 2 * most)
            worst = InOrder()[^1].Score;
    }

    /// <summary>The best first.</summary>
    public ReadOnlySpan<ScoredPage> InOrder()
    {
        CollectionsMarshal.AsSpan(kept).Sort();
        if (kept.Count > most)
            kept.RemoveRange(most, kept.Count - most);
        return CollectionsMarshal.AsSpan(kept);
    }
}
