using DxAssistant.Graph.Model;

namespace DxAssistant.Graph.Tests.BeliefTests;

public sealed class LikelihoodRatioTests
{
    private static readonly Check Look = Parts.Check("c", 1, 0.9, ("a", 0.1));

    // By hand: nine tenths pass with the fault and a tenth without it.
    [Theory]
    [InlineData(0, 9)]
    [InlineData(1, 1.0 / 9)]
    public void Of_PlainAnswer_IsTheQuotientOfTheLikelihoods(int outcome, double times) =>
        Assert.Equal(times, LikelihoodRatio.Of(Look, new FaultId("a"), outcome), 1e-12);

    // An answer that tells nothing: 1 against 1.
    [Fact]
    public void Of_EvenWeights_IsOne() => Assert.Equal(1, LikelihoodRatio.Of(Look, new FaultId("a"), [1, 1]), 1e-12);

    [Fact]
    public void Of_NeverSeenWithoutAFault_IsInfinite()
    {
        Check never = Parts.Check("c", 1, 1, ("a", 0.5));
        Assert.Equal(double.PositiveInfinity, LikelihoodRatio.Of(never, new FaultId("a"), 0));
    }

    [Fact]
    public void Of_SeenNeitherWithNorWithoutAFault_IsZero()
    {
        Check always = Parts.Check("c", 1, 1, ("a", 1));
        Assert.Equal(0, LikelihoodRatio.Of(always, new FaultId("a"), 0));
    }

    // By hand: 3 · 0.9 + 1 · 0.1 against 3 · 0.1 + 1 · 0.9.
    [Fact]
    public void Of_UnevenWeights_IsTheQuotientOfTheWeighedLikelihoods() =>
        Assert.Equal(2.8 / 1.2, LikelihoodRatio.Of(Look, new FaultId("a"), [3, 1]), 1e-12);
}
