using CsCheck;
using DxAssistant.Graph.Planning;

namespace DxAssistant.Graph.Tests.Planning;

/// <summary>
/// Sums four at a time against plain loops, at every length around a multiple of four. CsCheck prints the seed of a
/// case that fails.
/// </summary>
public sealed class LanesTests
{
    private const double Digits = 1e-12;

    private static readonly Gen<(double[] Left, double[] Right)> Rows = Gen.Int[0, 19]
        .SelectMany(length => Gen.Select(Gen.Double[0, 5].Array[length], Gen.Double[0, 5].Array[length]));

    [Fact]
    public void Dot_AnyLength_IsTheSumOfProducts() => Rows.Sample(rows =>
        Assert.Equal(rows.Left.Zip(rows.Right, (left, right) => left * right)
            .Sum(), Lanes.Dot(rows.Left, rows.Right), Digits * 500));

    [Fact]
    public void Multiply_AnyLength_WritesTheProductsAndReturnsTheirSum() => Rows.Sample(rows =>
    {
        double[] expected = [.. rows.Left.Zip(rows.Right, (left, right) => left * right)], products =
            new double[expected.Length];
        Assert.Equal(expected.Sum(), Lanes.Multiply(rows.Left, rows.Right, products), Digits * 500);
        Assert.Equal(expected, products);
    });

    [Fact]
    public void DotAndSquares_AnyLength_AgreesWithPlainSums() => Rows.Sample(rows =>
    {
        double[] products = [.. rows.Left.Zip(rows.Right, (left, right) => left * right)];
        (double sum, double squares) = Lanes.DotAndSquares(rows.Left, rows.Right);
        Assert.Equal(products.Sum(), sum, Digits * 500);
        Assert.Equal(products.Sum(product => product * product), squares, Digits * 15_000);
    });

    [Fact]
    public void LesserCross_AnyLength_TakesTheLessOfEachPair() => Gen.Select(Rows, Gen.Double[0, 5], Gen.Double[0, 5])
        .Sample((rows, price, weight) => Assert.Equal(
            rows.Left.Zip(rows.Right, (other, chance) => Math.Min(price * chance, weight * other)).Sum(),
            Lanes.LesserCross(price, weight, rows.Left, rows.Right), Digits * 500));

    [Fact]
    public void Divide_AnyLength_DividesEachItem() => Gen.Select(Rows, Gen.Double[0.1, 5]).Sample((rows, divisor) =>
    {
        double[] items = [.. rows.Left];
        Lanes.Divide(items, divisor);
        Assert.Equal(rows.Left.Select(item => item / divisor), items);
    });

    // The order of adding is fixed, so the last bit is too: 1e16 + 1 loses the 1 in one lane, and keeps it across
    // lanes.
    [Fact]
    public void Dot_RoundingInOneLane_AddsInTheSameOrderEverywhere()
    {
        double[] items = [1e16, 1, 0, 0, 1, 1, 0, 0], ones = [1, 1, 1, 1, 1, 1, 1, 1];
        Assert.Equal(1e16 + 2, Lanes.Dot(items, ones));
    }

    [Fact]
    public void Multiply_ResultsTooShort_Throws() =>
        Assert.ThrowsAny<Exception>(() => Lanes.Multiply(new double[8], new double[8], new double[3]));
}
