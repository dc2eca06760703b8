using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Tests.Quantities;

/// <summary>Numbers as people read them.</summary>
public sealed class NumberTextTests
{
    // Definition: decimals as far as the number has them, powers of ten for what is very large or very small, no minus
    // before nought.
    [Theory]
    [InlineData(0, "0")]
    [InlineData(-0.0, "0")]
    [InlineData(0.1 + 0.2, "0.3")]
    [InlineData(-2.5, "-2.5")]
    [InlineData(1e-6, "0.000001")]
    [InlineData(1e-7, "1e-7")]
    [InlineData(-1.5e-7, "-1.5e-7")]
    [InlineData(123_456_000_000, "123456000000")]
    [InlineData(1e15, "1e15")]
    [InlineData(-2.5e15, "-2.5e15")]
    public void Of_Number_IsShortAndPlain(double value, string text) => Assert.Equal(text, NumberText.Of(value));

    // Definition: significant digits; a minus before nought goes, what is not finite stays.
    [Theory]
    [InlineData(123_456, 3, 123_000)]
    [InlineData(0.00123456, 3, 0.00123)]
    [InlineData(-1.005, 3, -1)]
    [InlineData(double.PositiveInfinity, 3, double.PositiveInfinity)]
    public void Round_SignificantDigits_AreKept(double value, int digits, double rounded) =>
        Assert.Equal(rounded, NumberText.Round(value, digits));

    [Fact]
    public void Round_NegativeNought_LosesItsSign() => Assert.False(double.IsNegative(NumberText.Round(-0.0)));

    // Definition: thousands in threes, a power of ten with or without sign, a minus of either kind.
    [Theory]
    [InlineData("1,234,567 V", 1_234_567)]
    [InlineData("-1,500 V", -1_500)]
    [InlineData("+12 V", 12)]
    [InlineData("2e3 V", 2_000)]
    [InlineData("2e+3 V", 2_000)]
    [InlineData("2E-3 V", 0.002)]
    [InlineData("2.5e12V", 2.5e12)]
    [InlineData("1,500.25 V", 1_500.25)]
    public void TryParse_Number_IsRead(string text, double value)
    {
        Assert.True(QuantityText.TryParse(text, out Quantity? quantity));
        Assert.Equal(value, quantity.Value, Math.Abs(value) * 1e-12);
    }

    [Theory]
    [InlineData("1,23 V")]
    [InlineData("1,2345,678 V")]
    [InlineData("1234,567 V")]
    [InlineData("1,234,56 V")]
    [InlineData(",234 V")]
    [InlineData("1e400 V")]
    public void TryParse_ThousandsNotInThrees_AreRefused(string text) =>
        Assert.False(QuantityText.TryParse(text, out _));
}
