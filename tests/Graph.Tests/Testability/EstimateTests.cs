using DxAssistant.Graph.Testability;

namespace DxAssistant.Graph.Tests.Testability;

public sealed class EstimateTests
{
    // By hand: mean 3, sample variance 2.5, standard error √(2.5/5), times 1.96.
    [Fact]
    public void MeanOf_FiveValues_HasTheNormalInterval()
    {
        Estimate mean = Estimate.MeanOf([1, 2, 3, 4, 5]);
        Assert.Equal(3, mean.Value);
        Assert.Equal(1.3859, mean.HalfWidth, 1e-4);
    }

    // Source: Newcombe, Statistics in Medicine 17, 1998, table I (from memory): 0 of 20 gives 0 to 0.1611.
    [Fact]
    public void ShareOf_NoneOfTwenty_ReachesToTheWilsonBound() =>
        Assert.Equal(0.1611, Estimate.ShareOf(0, 20).HalfWidth, 1e-4);

    [Fact]
    public void Mixture_IndependentFigures_AddsVariances()
    {
        Estimate mixed = Estimate.Mixture([(0.5, new Estimate(10, 6)), (0.5, new Estimate(20, 8))]);
        Assert.Equal(15, mixed.Value, 1e-12);
        Assert.Equal(5, mixed.HalfWidth, 1e-12);
    }
}
