using DxAssistant.Graph.Testability;
using DxAssistant.Server.Commands;

namespace DxAssistant.Bot.Tests.Server.Commands;

public sealed class EstimateTextTests
{
    [Theory]
    [InlineData(5, 4, 6, "0.0", "5.0 ± 1.0")]
    [InlineData(5, 4.99, 5.01, "0.0", "5.0 ± under 0.1")]
    [InlineData(5, 4.9, 5.1, "0", "5 ± under 1")]
    [InlineData(5, 5, 5, "0.0", "5.0, all alike")]
    [InlineData(100, 91.2, 100, "0", "100 (91–100)")]
    [InlineData(0, 0, 0.075, "0.000", "0.000, at most 0.075")]
    [InlineData(5, double.NegativeInfinity, double.PositiveInfinity, "0.0", "5.0 ± ?")]
    public void Of_Interval_SaysHowFarOffItMayBe(double value, double low, double high, string format, string said) =>
        Assert.Equal(said, EstimateText.Of(new Estimate(value, low, high), format));
}
