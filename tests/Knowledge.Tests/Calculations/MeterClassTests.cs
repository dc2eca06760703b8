using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Calculations.Doubt;

namespace DxAssistant.Knowledge.Tests.Calculations;

public sealed class MeterClassTests
{
    // Source: limit = |reading| % + counts × resolution (GUM JCGM 100:2008, 4.3.7); 2.000 V at 0.08 % + 2 counts is
    // 0.0036 V.
    [Theory]
    [InlineData("0.08 % + 2 × 0.001 V", 2.0, 0.0036)]
    [InlineData("0.7 % + 2 × 0.1 V", 230.4, 1.8128)]
    [InlineData("1 % + 3 × 0.01 kΩ", 10_000, 130)]
    [InlineData("1%+3x0.01 Ω", 1, 0.04)]
    [InlineData("± 0.5 K", 300, 0.5)]
    [InlineData("± 2 °F", 20, 1.1111111)]
    [InlineData("± 3 %", 50, 1.5)]
    [InlineData("2 × 1 V", 325, 2)]
    public void LimitOfError_AsWritten_IsInTheSiBase(string text, double reading, double limit)
    {
        Assert.True(MeterClass.TryParse(text, out var meter));
        Assert.Equal(limit, meter.LimitOfError(reading), 1e-6);
        Assert.Equal(limit / Math.Sqrt(3), meter.StandardUncertainty(reading), 1e-6);
    }

    [Theory]
    [InlineData("")]
    [InlineData(null)]
    [InlineData("good")]
    [InlineData("1 % + 3")]
    [InlineData("1 % + 2 %")]
    [InlineData("-1 %")]
    [InlineData("1 % + 3 × 0.01 bananas")]
    public void TryParse_NotAMeter_IsRefused(string? text) => Assert.False(MeterClass.TryParse(text, out _));

    [Theory]
    [InlineData("1 % + 3 × 0.01 Ω")]
    [InlineData("± 0.5 K")]
    [InlineData("0.5 %")]
    [InlineData("2 × 1 V")]
    public void ToString_OfParsed_ReadsTheSame(string text)
    {
        Assert.True(MeterClass.TryParse(text, out var meter));
        Assert.Equal(text, meter.ToString());
    }
}
