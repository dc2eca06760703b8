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

    // Source: Newcombe, Statistics in Medicine 17, 1998, table I, method 3 (from memory): 81 of 263 gives 0.2553 to
    // 0.3662, 15 of 148 gives 0.0624 to 0.1605, 1 of 29 gives 0.0061 to 0.1718.
    [Theory]
    [InlineData(81, 263, 0.2553, 0.3662)]
    [InlineData(15, 148, 0.0624, 0.1605)]
    [InlineData(1, 29, 0.0061, 0.1718)]
    public void ShareOf_PublishedExamples_HasTheirInterval(int hits, int draws, double low, double high)
    {
        Estimate share = Estimate.ShareOf(hits, draws);
        Assert.Equal(low, share.Low, 5e-5);
        Assert.Equal(high, share.High, 5e-5);
    }

    [Fact]
    public void ShareOf_AllDraws_EndsAtOne() =>
        Assert.Equal((1, 1), (Estimate.ShareOf(40, 40).Value, Estimate.ShareOf(40, 40).High));

    // Source: Hanley and Lippman-Hand, JAMA 249, 1983 (from memory): nothing in n draws is at most 3/n. Their reason by
    // hand: a share of 3/40 shows nothing in 40 draws with probability (1 - 3/40)^40, under one in twenty.
    [Fact]
    public void MeanOfCounts_NothingInFortyDraws_IsAtMostThreeInForty()
    {
        Estimate none = Estimate.MeanOfCounts(new double[40]);
        Assert.Equal((0, 0, 0.075), (none.Value, none.Low, none.High));
        Assert.InRange(Math.Pow(1 - none.High, 40), 0.04, 0.05);
    }

    // By hand: once in 40 draws the Wilson interval of 1/40 is 0.0044 to 0.1288; Student's t would give -0.026 to
    // 0.076.
    [Fact]
    public void MeanOfCounts_OnceInFortyDraws_HasTheIntervalOfTheShare()
    {
        Estimate once = Estimate.MeanOfCounts([1, .. new double[39]]);
        Assert.Equal(0.0044, once.Low, 5e-5);
        Assert.Equal(0.1288, once.High, 5e-5);
    }

    [Fact]
    public void MeanOfCounts_OftenInEachDraw_HasStudentsInterval() =>
        Assert.Equal(Estimate.MeanOf([1, 2, 3, 4, 5]), Estimate.MeanOfCounts([1, 2, 3, 4, 5]));

    [Fact]
    public void MeanOfAmounts_WideSpread_DoesNotReachBelowNothing()
    {
        Estimate mean = Estimate.MeanOfAmounts([0, 0, 0, 100]);
        Assert.Equal(0, mean.Low);
        Assert.Equal(Estimate.MeanOf([0, 0, 0, 100]).High, mean.High);
    }

    // By hand: 0 of 20 and 20 of 20, half and half, are worth 1/(0.25/20 + 0.25/20) = 40 draws, half of them hits.
    [Fact]
    public void MixtureOfShares_BothEnds_HasTheIntervalOfAllDraws()
    {
        Estimate mixed =
            Estimate.MixtureOfShares([(0.5, Estimate.ShareOf(0, 20), 20), (0.5, Estimate.ShareOf(20, 20), 20)]);
        Assert.Equal(Estimate.ShareOf(20, 40), mixed);
    }

    [Fact]
    public void MixtureOfShares_AllHits_EndsAtOne()
    {
        Estimate mixed =
            Estimate.MixtureOfShares([(0.3, Estimate.ShareOf(20, 20), 20), (0.7, Estimate.ShareOf(20, 20), 20)]);
        Assert.Equal((1, 1), (Math.Round(mixed.Value, 12), Math.Round(mixed.High, 12)));
        Assert.InRange(mixed.Low, 0.8, 0.95);
    }

    // By hand: nothing in two parts of 20 draws each is at most 3 in the 40 of both.
    [Fact]
    public void MixtureOfCounts_NothingAnywhere_IsAtMostThreeInAllDraws()
    {
        Estimate none = Estimate.MeanOfCounts(new double[20]);
        Estimate mixed = Estimate.MixtureOfCounts([(0.5, none, 20), (0.5, none, 20)]);
        Assert.Equal((0, 0, 0.075), (mixed.Value, mixed.Low, Math.Round(mixed.High, 12)));
    }

    // Exact figures have no draws to be unsure of.
    [Fact]
    public void MixtureOfCounts_ExactFigures_IsExact() => Assert.Equal(
        Estimate.Exactly(0),
        Estimate.MixtureOfCounts([(0.5, Estimate.Exactly(0), double.PositiveInfinity),
            (0.5, Estimate.Exactly(0), double.PositiveInfinity)]));

    // A part in which it happened once and others in which it never did: the ends hold what one draw in all of them
    // says.
    [Fact]
    public void MixtureOfCounts_OnceInManyParts_IsNoSurerThanOneInAllDraws()
    {
        Estimate once = Estimate.MeanOfCounts([1, 0, 0, 0]), none = Estimate.MeanOfCounts(new double[4]);
        Estimate mixed = Estimate.MixtureOfCounts([(0.1, once, 4), .. Enumerable.Repeat((0.1, none, 4.0), 9)]);
        Assert.Equal(0, mixed.Low, 1e-12);
        Assert.InRange(mixed.High, Estimate.ShareOf(1, 40).High - 1e-9, 3 * Estimate.ShareOf(1, 40).High);
    }

    [Fact]
    public void Mixture_IndependentFigures_AddsVariances()
    {
        Estimate mixed = Estimate.Mixture([(0.5, new Estimate(10, 6)), (0.5, new Estimate(20, 8))]);
        Assert.Equal(15, mixed.Value, 1e-12);
        Assert.Equal(5, mixed.HalfWidth, 1e-12);
    }

    // One value says nothing of how far others lie from it.
    [Fact]
    public void MeanOf_OneValue_HasNoEnds() => Assert.Equal(double.PositiveInfinity, Estimate.MeanOf([4]).HalfWidth);

    [Fact]
    public void HalfWidth_UnevenEnds_IsTheWiderSide()
    {
        Assert.Equal(3, new Estimate(10, 7, 12).HalfWidth);
        Assert.Equal(5, new Estimate(10, 9, 15).HalfWidth);
    }

    // Hours from minutes, a fixed way added: the ends go along.
    [Fact]
    public void TimesAndPlus_Estimate_MoveItsEndsAlong()
    {
        Estimate minutes = new(30, 6), hours = minutes.Times(1.0 / 60);
        Assert.Equal(0.5, hours.Value, 1e-12);
        Assert.Equal(0.4, hours.Low, 1e-12);
        Assert.Equal(0.6, hours.High, 1e-12);
        Assert.Equal(0.1, hours.Spread, 1e-12);
        Assert.Equal(new Estimate(40, 6), minutes.Plus(10));
    }
}
