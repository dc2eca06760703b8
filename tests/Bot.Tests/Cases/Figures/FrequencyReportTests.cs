using DxAssistant.Bot.Tests.Conversation;
using DxAssistant.Cases.Figures;

namespace DxAssistant.Bot.Tests.Cases.Figures;

/// <summary>New frequency words come from many cases, not from a few.</summary>
public sealed class FrequencyReportTests
{
    private const string Fault = "power-module-shorted";

    [Fact]
    public void Of_NoCases_KeepsEveryWord() =>
        Assert.DoesNotContain(FrequencyReport.Of(ShippedContent.Library, new Dictionary<string, int>()),
            line => line.IsChange);

    [Fact]
    public void Of_OneCaseOfAnyFault_ChangesNoWord() => Assert.All(
        ShippedContent.Library.Faults.Keys.Select(fault => fault.Value),
        fault => Assert.DoesNotContain(
            FrequencyReport.Of(ShippedContent.Library, new Dictionary<string, int> { [fault] = 1 }),
            line => line.IsChange));

    [Fact]
    public void Of_ManyCasesOfOneFault_MakesItCommon()
    {
        var line = Assert.Single(FrequencyReport.Of(ShippedContent.Library, new Dictionary<string, int>
        {
            [Fault] = 200,
        }), found => found.Fault == Fault);
        Assert.Equal("occasional", line.Word);
        Assert.Equal("common", line.Proposed);
    }

    // Worked by hand: the posterior mean of a Dirichlet prior of weight w and share p after n of N is (w p + n) / (w +
    // N).
    [Fact]
    public void Of_Counts_ShareIsThePosteriorMean()
    {
        var faults = ShippedContent.Library.Graph.Faults;
        double prior = 2.0 / faults.Sum(fault => fault.Weight);
        var line = FrequencyReport.Of(ShippedContent.Library, new Dictionary<string, int>
        {
            [Fault] = 30, ["indoor-fan-motor-failed"] = 70,
        }, 400)
            .Single(found => found.Fault == Fault);
        Assert.Equal((400 * prior + 30) / 500, line.Share, 0.00001);
        Assert.Equal(100 * prior, line.Expected, 0.01);
    }

    [Fact]
    public void Of_WeightNotAboveZero_Throws() => Assert.Throws<ArgumentOutOfRangeException>(
        () => FrequencyReport.Of(ShippedContent.Library, new Dictionary<string, int>(), 0));
}
