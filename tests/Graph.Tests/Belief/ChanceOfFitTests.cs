using System.Collections.Immutable;
using CsCheck;

namespace DxAssistant.Graph.Tests;

/// <summary>How often outcomes are as odd as those seen, against all that may be seen.</summary>
public sealed class ChanceOfFitTests
{
    // Published: tables of the binomial distribution, n = 20, p = 0.05, P(X ≥ 1) 0.6415, P(X ≥ 3) 0.0755, P(X ≥ 5)
    // 0.0026 (cumulative tables of statistics textbooks; from memory, and worked out here again by the sum).
    [Theory]
    [InlineData(20, 1, 0.6415)]
    [InlineData(20, 3, 0.0755)]
    [InlineData(20, 5, 0.0026)]
    public void OddOfMany_AreNoRarerThanTheTable(int checks, int odd, double table)
    {
        ImmutableArray<double>[] rows = [.. Enumerable.Repeat<ImmutableArray<double>>([0.95, 0.05], checks)];
        double atMost = ChanceOfFit.AtMost(Math.Pow(0.05 / 0.95, odd), rows);
        Assert.InRange(atMost, table - 5e-5, 1);
        // No bound of this kind is far off where the chance is small: Cramér 1938 says they agree in the exponent.
        Assert.True(odd < 5 || atMost < 20 * table, $"{atMost}");
    }

    [Fact]
    public void Chance_IsNeverLargerThanSaid() =>
        Gen.Select(Gen.Double[0, 1].Array[2, 4].Array[1, 6], Gen.Int[0, 1_000_000]).Sample((raw, drawn) =>
        {
            ImmutableArray<double>[] rows = [.. raw.Where(row => row.Sum() > 0.01)
                .Select(row => row.Select(weight => weight / row.Sum()).ToImmutableArray())];
            if (rows.Length == 0) return;
            (double Chance, double Fit)[] all = [.. rows.Aggregate(Enumerable.Repeat((Chance: 1.0, Fit: 1.0), 1),
                (seen, row) =>
                    seen.SelectMany(
                        one => row.Select(likelihood => (one.Chance * likelihood, one.Fit * likelihood / row.Max()))))];
            double fit = all[drawn % all.Length].Fit;
            double exact = all.Where(one => one.Fit <= fit * (1 + 1e-12)).Sum(one => one.Chance);
            Assert.True(ChanceOfFit.AtMost(fit, rows) >= exact - 1e-9, $"{ChanceOfFit.AtMost(fit, rows)} < {exact}");
        });

    [Fact]
    public void WhatCannotBeSeen_IsNoChance() => Assert.Equal(0, ChanceOfFit.AtMost(0, [[1, 0], [0.5, 0.5]]));

    [Fact]
    public void WhatIsSeenMost_IsAlwaysAChance() => Assert.Equal(1, ChanceOfFit.AtMost(1, [[0.9, 0.1]]));

    // Chernoff 1952: fˢ ∏ Σ p¹⁻ˢ mˢ for any s; here with powers, over the four s that the summary names. What is never
    // seen has no share.
    [Fact]
    public void AtMost_AnyRows_IsTheLeastOfChernoffsBoundsAtTheFourths() =>
        Gen.Select(Gen.Double[0.01, 0.99].Array[1, 8], Gen.Double[1e-6, 1]).Sample((shares, fit) =>
        {
            ImmutableArray<double>[] rows = [.. shares.Select<double, ImmutableArray<double>>(
                share => [share, (1 - share) / 3, 2 * (1 - share) / 3, 0])];
            double least =
                Enumerable.Range(1, 4).Select(fourths => fourths / 4.0).Min(s => Math.Pow(fit, s) * rows.Aggregate(
                    1.0, (all, row) => all * row.Where(p => p > 0)
                        .Sum(p => Math.Pow(p, 1 - s) * Math.Pow(row.Max(), s))));
            Assert.Equal(Math.Min(1, least), ChanceOfFit.AtMost(fit, rows), 1e-9);
        });

    // Three odd of nine, each odd once in twenty: of the four bounds the one at three fourths is the least.
    [Fact]
    public void AtMost_ThreeOddOfNine_IsTheBoundAtThreeFourths()
    {
        double fit = Math.Pow(0.05 / 0.95, 3), bound =
            Math.Pow(fit, 0.75) * Math.Pow(0.95 + Math.Pow(0.05, 0.25) * Math.Pow(0.95, 0.75), 9);
        Assert.Equal(bound, ChanceOfFit.AtMost(fit, Enumerable.Repeat<ImmutableArray<double>>([0.05, 0.95], 9)), 1e-9);
    }
}
