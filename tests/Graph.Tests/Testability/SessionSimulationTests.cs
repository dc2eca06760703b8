using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Graph.Planning.Baselines;
using DxAssistant.Graph.Testability;
using DxAssistant.Graph.Tests.Planning;
using Xunit.Abstractions;

namespace DxAssistant.Graph.Tests.Testability;

public sealed class SessionSimulationTests(ITestOutputHelper output)
{
    [Theory]
    [InlineData("s-access-01")]
    [InlineData("s-noisy-13")]
    [InlineData("s-large-04")]
    public void Play_ManySessions_AverageToTheExpectedMinutes(string id)
    {
        SequencingInstance instance = SequencingFile.Instance(id);
        SessionSimulation simulation = new(instance.Problem, new LivePlanner(), new Draws(1));
        double[] minutes = [.. Enumerable.Range(0, 4_000).Select(_ => simulation.Play().Minutes)];
        double mean = minutes.Average();
        double error =
            Math.Sqrt(minutes.Sum(value => (value - mean) * (value - mean)) / minutes.Length / minutes.Length);
        Assert.InRange(instance.ExpectedCost, mean - 5 * error, mean + 5 * error);
    }

    // What a unit shows does not depend on who asks: another way to the same repair meets the same answers.
    [Fact]
    public void Play_SameUnit_IsTheSameSession()
    {
        SequencingProblem problem = new RandomProblems(5).Repairing(6, 8, 2, perfect: 0);
        SessionSimulation first = new(problem, new LivePlanner(), new Draws(1)), second =
            new(problem, new LivePlanner(), new Draws(2));
        for (ulong unit = 1; unit <= 20; unit++)
            Assert.Equal(first.Play(unit) with { Losses = [], HeldBack = [] }, second.Play(unit)
                with { Losses = [], HeldBack = [] });
    }

    [Fact]
    public void Play_FaultLeftUnfoundByWatching_IsPriced()
    {
        SequencingProblem problem = new(
            Objective.Repair, [Parts.Fault(FaultId.NoneOfThese.Value), Parts.Fault("board")], [],
            [Parts.Repair("watch", 5, FaultId.NoneOfThese.Value), Parts.Repair("swap", 50, "board")],
            AccessStates.OnlyOne);
        SessionSimulation priced = new(problem, new RepairOnly(), new Draws(1), leftUnfound: 240);
        SessionTally[] walks = [.. Enumerable.Range(0, 20).Select(_ => priced.Play())];
        Assert.Contains(walks, walk => walk.RepairsInVain == 1);
        Assert.All(walks, walk => Assert.Equal(walk.Minutes + 240 * walk.RepairsInVain, walk.Priced, 1e-9));
    }

    // A label that is read and a part that is changed: only the latter counts as a part.
    [Fact]
    public void Play_RepairWithoutAPart_CountsAsNoPartInVain()
    {
        SequencingProblem problem = new(
            Objective.Repair, [Parts.Fault("label"), Parts.Fault("board"), Parts.Fault("fan", 0.01)], [],
            [
                Parts.Repair("read", 1, "label"), Parts.Repair("swap", 50, "board") with { WrongMinutes = 240 },
                Parts.Repair("turn", 500, "fan"),
            ],
            AccessStates.OnlyOne);
        SessionSimulation simulation = new(problem, new RepairOnly(), new Draws(1));
        SessionTally[] walks = [.. Enumerable.Range(0, 400).Select(_ => simulation.Play())];
        Assert.Equal([(0, 0), (1, 0), (2, 1)], walks.Select(walk => (walk.RepairsInVain, walk.PartsInVain)).Distinct()
            .Order());
    }

    // Too large to solve: 15 faults, 20 noisy checks. Compared with common practice on the same sessions.
    [Fact]
    public void LivePlanner_LargeProblems_TakesFewerMinutesThanSimplePolicies()
    {
        (double live, double information, double oneStep) = (0, 0, 0);
        for (int seed = 1; seed <= 3; seed++)
        {
            SequencingProblem problem = new RandomProblems(seed).Repairing(15, 20, 4, perfect: 0.2);
            live += MeanMinutes(problem, new LivePlanner(400_000), seed);
            information += MeanMinutes(problem, new InfoGainPerCost(), seed);
            oneStep += MeanMinutes(problem, new EcoMyopic(), seed);
        }

        output.WriteLine($"live {live:0.0}, information per cost {information:0.0}, one step ahead {oneStep:0.0}");
        Assert.True(live < information);
        Assert.True(live < oneStep);
    }

    [Fact]
    public void LivePlanner_FortyFaultsSixtyChecksFiveStates_KeepsToItsWork()
    {
        SequencingProblem problem = new RandomProblems(7).Repairing(40, 60, 5, perfect: 0);
        Plan plan = new LivePlanner().Plan(problem, problem.Begin());
        // The last expansion is finished: at most 60 checks in 2 states with 3 outcomes, and 41 repairs in 2 states.
        Assert.InRange(plan.Work, 1, LivePlanner.UsualWork / (40 * (60 + problem.Repairs.Length)) + 60 * 2 * 3
            + 41 * 2);
        Assert.True(plan.Minutes < double.PositiveInfinity);
    }

    private static double MeanMinutes(SequencingProblem problem, IPolicy policy, int seed)
    {
        SessionSimulation simulation = new(problem, policy, new Draws((ulong)seed));
        return Enumerable.Range(0, 60).Average(_ => simulation.Play().Minutes);
    }
}
