using DxAssistant.Graph.Testability;

namespace DxAssistant.Graph.Tests.Testability;

public sealed class DrawsTests
{
    // Source: published sample output of SplitMix64 for seed 1234567 (from memory).
    [Fact]
    public void Next_KnownSeed_GivesThePublishedNumbers()
    {
        Draws draws = new(1234567);
        Assert.Equal(
            [6457827717110365317UL, 3203168211198807973UL, 9817491932198370423UL, 4593380528125082431UL,
                16408922859458223821UL],
            Enumerable.Range(0, 5).Select(_ => draws.Next()));
    }

    [Fact]
    public void NextPlace_Weights_DrawsInTheirProportion()
    {
        Draws draws = new(5);
        int[] counts = new int[3];
        for (int drawn = 0; drawn < 30_000; drawn++) counts[draws.NextPlace([1, 0, 3])]++;
        Assert.Equal(0, counts[1]);
        // A quarter of 30,000, five standard deviations of √(30,000 · ¼ · ¾) = 75 to either side.
        Assert.InRange(counts[0], 7_500 - 375, 7_500 + 375);
    }

    // Shares are even over 0 to 1: mean 1/2 and variance 1/12; five standard errors of the mean.
    [Fact]
    public void NextShare_ManyDraws_AreEvenBelowOne()
    {
        Draws draws = new(9);
        double[] shares = [.. Enumerable.Range(0, 10_000).Select(_ => draws.NextShare())];
        Assert.All(shares, share => Assert.InRange(share, 0, 1 - 1e-16));
        double error = 5 * Math.Sqrt(1.0 / 12 / shares.Length);
        Assert.InRange(shares.Average(), 0.5 - error, 0.5 + error);
        Assert.InRange(shares.Max(), 0.99, 1);
    }

    [Fact]
    public void NextPlace_OneWeightAmongZeros_IsItsPlace() =>
        Assert.All(Enumerable.Range(0, 100), seed => Assert.Equal(1, new Draws((ulong)seed).NextPlace([0, 2, 0])));
}
