using CsCheck;
using DxAssistant.Graph.Planning;

namespace DxAssistant.Graph.Tests.Planning;

public sealed class LogarithmTests
{
    // Source: powers of two and log₂ 10 = 3.32192809488736234787 (handbook constant).
    [Theory]
    [InlineData(1, 0)]
    [InlineData(2, 1)]
    [InlineData(0.125, -3)]
    [InlineData(10, 3.32192809488736234787)]
    public void Base2_KnownValues_AreMet(double value, double expected) =>
        Assert.Equal(expected, Logarithm.Base2(value), 1e-15 * Math.Max(1, Math.Abs(expected)));

    [Fact]
    public void Base2_AnyShare_AgreesWithTheLibrary() => Gen.Double[1e-12, 1].Sample(value =>
        Assert.Equal(Math.Log2(value), Logarithm.Base2(value), 1e-13));

    [Fact]
    public void Entropy_Zero_IsZero() => Assert.Equal(0, Logarithm.Entropy(0));
}
