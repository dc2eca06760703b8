using DxAssistant.Graph.Testability;

namespace DxAssistant.Graph.Tests.Testability;

public sealed class EstimateTests
{
    // By hand: mean 3, sample variance 2.5, standard error √(2.5/5), times 2.776.
    [Fact]
    public void MeanOf_FiveValues_HasStudentsInterval()
    {
        Estimate mean = Estimate.MeanOf([1, 2, 3, 4, 5]);
        Assert.Equal(3, mean.Value);
        Assert.Equal(2.7764 * Math.Sqrt(0.5), mean.HalfWidth, 1e-3);
    }

    // Source: Abramowitz and Stegun, Handbook of Mathematical Functions, table 26.10, column 0.975 (from memory).
    [Theory]
    [InlineData(1, 12.706)]
    [InlineData(2, 4.303)]
    [InlineData(4, 2.776)]
    [InlineData(5, 2.571)]
    [InlineData(7, 2.365)]
    [InlineData(10, 2.228)]
    [InlineData(30, 2.042)]
    [InlineData(120, 1.980)]
    public void MeanOf_DegreesOfFreedom_HaveThePointsOfTheTable(int degrees, double point)
    {
        int count = degrees + 1;
        double[] values = [.. Enumerable.Range(0, count).Select(place => (double)place)];
        double deviation = Math.Sqrt(values.Sum(value => Math.Pow(value - values.Average(), 2)) / degrees);
        Assert.Equal(point, Estimate.MeanOf(values).HalfWidth / (deviation / Math.Sqrt(count)), 1e-3);
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
