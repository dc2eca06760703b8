using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;

namespace DxAssistant.Graph.Tests.Planning;

public sealed class PcOrderTests
{
    // Sources: exchange argument, Smith's rule of 1956 (from memory), the first two checked by brute force over all
    // orders; the third is a published example of weighted shortest processing time, whose weights are not
    // normalised: cost is the sum of weight times completion time.
    [Theory]
    [InlineData("ABCD", new[] { 0.4, 0.3, 0.2, 0.1 }, new[] { 20.0, 5, 10, 2 }, "BDAC", 20.4)]
    [InlineData("ABC", new[] { 0.5, 0.3, 0.2 }, new[] { 30.0, 30, 30 }, "ABC", 51.0)]
    [InlineData("ABCDE", new[] { 1.0, 2, 4, 1, 3 }, new[] { 6.0, 2, 8, 3, 9 }, "BCDEA", 151.0)]
    public void Plan_OneRepairEach_FollowsFallingProbabilityPerCost(
        string faults, double[] weights, double[] minutes, string order, double expected)
    {
        SequencingProblem problem = new(
            Objective.Repair,
            faults.Select((name, place) => Parts.Fault($"{name}", weights[place])),
            [],
            faults.Select((name, place) => Parts.Repair($"{name}", minutes[place], $"{name}")),
            AccessStates.OnlyOne);
        Assert.Equal(expected, new ExactPlanner().Plan(problem, problem.Begin()).Minutes * weights.Sum(), 1e-6);
        Assert.Equal(order, OrderOf(problem));
    }

    private static string OrderOf(SequencingProblem problem)
    {
        string order = "";
        Position here = problem.Begin();
        while (order.Length < problem.Repairs.Length)
        {
            PlannedStep.DoRepair step = Assert.IsType<PlannedStep.DoRepair>(new ExactPlanner().Next(problem, here));
            order += step.Repair.Value;
            if (order.Length < problem.Repairs.Length) here = here.Failed(step.Repair, step.Access);
        }

        return order;
    }
}
