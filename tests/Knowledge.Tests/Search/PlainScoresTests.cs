using System.Collections.Immutable;
using System.Globalization;
using DxAssistant.Knowledge.Search.Indexing;

namespace DxAssistant.Knowledge.Tests.Search;

public class PlainScoresTests
{
    private const int Pages = 450;
    private const int Kept = 400;

    [Fact]
    public void Score_MorePagesFitThanAreLookedAt_KeepsTheBestAndOfTheOthersTheFirst()
    {
        var index = SearchIndex.Build(Enumerable.Range(0, Pages).Select(Page), []);

        using var question = index.Ask(index.Analyze(index.Words("rattle")));
        ImmutableArray<PageFit> fits = [.. question.Fits.AsSpan()];

        Assert.Equal(Pages, fits.Length);
        Assert.Equal(Enumerable.Range(0, Kept - 1).Append(Pages - 1), Enumerable.Range(0, Pages)
            .Where(page => fits[page].Plain > 0));
        Assert.Equal(fits[0].Plain, fits[Kept - 2].Plain);
    }

    // The last page says it oftener in as many words.
    private static SearchEntry Page(int number) => new(
        NodeKind.Fault, number.ToString("000", CultureInfo.InvariantCulture),
        $"page {number.ToString("000", CultureInfo.InvariantCulture)}",
        ["fan"], number == Pages - 1 ? "rattle rattle rattle" : "rattle sound heard");
}
