using DxAssistant.Graph.Planning;
using Xunit.Abstractions;

namespace DxAssistant.Graph.Tests.Planning;

public sealed class LivePlannerTests(ITestOutputHelper output)
{
    // Own bars: the mean and the worst ratio of the policy's exact cost to the optimum.
    [Theory]
    [InlineData("perfect", 1.001, 1.02)]
    [InlineData("noisy", 1.001, 1.02)]
    [InlineData("access", 1.001, 1.02)]
    [InlineData("large", 1.001, 1.02)]
    [InlineData("trap", 1.01, 1.05)]
    [InlineData("published", 1.001, 1.02)]
    public void Next_UsualWork_StaysNearTheOptimum(string type, double meanBar, double worstBar) =>
        AssertRatios(new LivePlanner(), type, meanBar, worstBar);

    // So little work that no instance of any size is solved: the look-ahead itself must be good.
    [Theory]
    [InlineData("perfect", 1.02, 1.08)]
    [InlineData("noisy", 1.01, 1.05)]
    [InlineData("access", 1.01, 1.05)]
    [InlineData("large", 1.02, 1.08)]
    [InlineData("trap", 1.02, 1.08)]
    public void Next_HundredthOfTheWork_StaysCompetitive(string type, double meanBar, double worstBar) =>
        AssertRatios(new LivePlanner(LivePlanner.UsualWork / 100), type, meanBar, worstBar);

    [Fact]
    public void LivePlanner_WorkNotAboveZero_Throws() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new LivePlanner(0));

    private void AssertRatios(LivePlanner planner, string type, double meanBar, double worstBar)
    {
        List<double> ratios = [];
        foreach (SequencingInstance instance in SequencingFile.Instances.Where(instance => instance.Type == type))
        {
            double minutes = new PolicyEvaluator(instance.Problem, planner).Minutes(instance.Problem.Begin());
            ratios.Add(minutes / instance.ExpectedCost);
            if (ratios[^1] > 1 + 1e-9) output.WriteLine($"{instance.Id} {ratios[^1]:0.00000}");
        }

        output.WriteLine($"{type}: mean {ratios.Average():0.00000}, worst {ratios.Max():0.00000}");
        Assert.InRange(ratios.Average(), 1 - 1e-9, meanBar);
        Assert.InRange(ratios.Max(), 1 - 1e-9, worstBar);
    }
}
