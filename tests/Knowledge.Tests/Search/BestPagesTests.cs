using System.Collections.Immutable;
using DxAssistant.Knowledge.Search.Indexing;

namespace DxAssistant.Knowledge.Tests.Search;

public class BestPagesTests
{
    private const int Most = 5;

    // Against a slow, obvious model; few scores, so that many are equal.
    [Theory]
    [InlineData(0)]
    [InlineData(3)]
    [InlineData(11)]
    [InlineData(400)]
    public void InOrder_AnyScores_AreTheBestAndOfEqualsTheFirst(int pages)
    {
        ImmutableArray<ScoredPage> all =
            [.. Enumerable.Range(0, pages).Select(page => new ScoredPage(page, page * 37 % 11))];
        var best = new BestPages(Most);

        foreach (var (page, score) in all)
            best.Offer(page, score);

        Assert.Equal(all.OrderByDescending(page => page.Score).ThenBy(page => page.Page).Take(Most), best.InOrder()
            .ToArray());
    }
}
