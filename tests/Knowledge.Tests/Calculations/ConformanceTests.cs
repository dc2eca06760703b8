using CsCheck;
using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Calculations.Doubt;

namespace DxAssistant.Knowledge.Tests.Calculations;

public sealed class ConformanceTests
{
    // Source: tables of the normal distribution (Abramowitz & Stegun, table 26.1; from memory).
    [Theory]
    [InlineData(0, 0.5)]
    [InlineData(1, 0.841344746068543)]
    [InlineData(1.4, 0.919243340766229)]
    [InlineData(-1.644853626951473, 0.05)]
    [InlineData(3, 0.998650101968370)]
    [InlineData(-5, 2.866515718791939e-7)]
    [InlineData(double.NegativeInfinity, 0)]
    [InlineData(double.PositiveInfinity, 1)]
    public void Probability_TableValues_AgreeTo12Digits(double z, double probability) =>
        Assert.Equal(probability, Normal.Probability(z), 1e-12 * Math.Max(probability, 1e-7));

    // Source: tables of the normal distribution: Φ(2) - Φ(1) = 0.135905, Φ(-9) = 1.1286e-19, Φ(-10) = 7.62e-24 (from
    // memory). Far out, one less a tail is one and nothing is left between two of them.
    [Theory]
    [InlineData(1, 2, 0.135905)]
    [InlineData(-2, -1, 0.135905)]
    [InlineData(9, 10, 1.12851e-19)]
    [InlineData(-10, -9, 1.12851e-19)]
    [InlineData(-1, 1, 0.682689)]
    public void Between_EitherSideOfTheMean_IsTheShareBetween(double low, double high, double share) =>
        Assert.Equal(share, Normal.Between(low, high), share * 1e-4);

    [Fact]
    public void Probability_NotANumber_Throws() => Assert.Throws<ArgumentOutOfRangeException>(
        () => Normal.Probability(double.NaN));

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(double.NaN)]
    public void Quantile_NotAProbability_Throws(double probability) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Normal.Quantile(probability));

    [Fact]
    public void Quantile_OfProbability_GivesTheNumberBack() => Gen.Double[-6, 6].Sample(
        z => Assert.Equal(z, Normal.Quantile(Normal.Probability(z)), 1e-5 * Math.Max(1, Math.Exp(z * z / 2) * 1e-8)));

    [Fact]
    public void Probability_LargerNumber_IsNeverSmaller() => Gen.Select(Gen.Double[-40, 40], Gen.Double[0, 5]).Sample(
        (z, step) => Assert.True(Normal.Probability(z + step) >= Normal.Probability(z)));

    [Fact]
    public void Of_AnyLimits_SumsToOneAndMirrors() =>
        Gen.Select(Gen.Double[-10, 10], Gen.Double[0, 3], Gen.Double[-5, 0], Gen.Double[0, 5])
            .Sample((value, uncertainty, least, most) =>
        {
            var (below, inside, above) = Conformance.Of(value, uncertainty, least, most);
            Assert.Equal(1, below + inside + above, 1e-12);
            Assert.Equal(below, Conformance.Of(-value, uncertainty, -most, -least).Above, 1e-12);
        });

    // Without uncertainty the ends belong to the inside, whatever the last bit says.
    [Theory]
    [InlineData(0.1 + 0.2, 0, 0.3)]
    [InlineData(0.3, 0.1 + 0.2, 1)]
    public void Of_OnTheLimit_IsInside(double value, double least, double most) =>
        Assert.Equal((0, 1, 0), Conformance.Of(value, 0, least, most));
}
