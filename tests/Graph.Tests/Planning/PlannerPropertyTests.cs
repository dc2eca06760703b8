using CsCheck;
using DxAssistant.Graph.Planning;
using Xunit.Abstractions;

namespace DxAssistant.Graph.Tests.Planning;

/// <summary>CsCheck prints the seed of a case that fails.</summary>
public sealed class PlannerPropertyTests(ITestOutputHelper output)
{
    private static readonly Gen<int> Seeds = Gen.Int[0, 1_000_000];

    [Fact]
    public void ExactPlanner_TinyRepairProblem_AgreesWithBruteForce() =>
        Gen.Select(Seeds, Gen.Int[1, 3], Gen.Int[0, 2], Gen.Int[1, 3])
        .Sample((seed, faults, checks, states) =>
            AssertBruteForce(new RandomProblems(seed).Repairing(faults, checks, states, perfect: 0.4)), iter: 300);

    [Fact]
    public void ExactPlanner_WrongPartsPriced_AgreesWithBruteForce() =>
        Gen.Select(Seeds, Gen.Int[2, 3], Gen.Int[0, 2], Gen.Int[1, 2],
            Gen.Int[1, 300]).Sample((seed, faults, checks, states, wrong) =>
            AssertBruteForce(new RandomProblems(seed).Repairing(faults, checks, states, perfect: 0.4)
                .WithWrongMinutes(wrong)), iter: 150);

    [Fact]
    public void ExactPlanner_ChecksThatLeaveTheUnitElsewhere_AgreesWithBruteForce() =>
        Gen.Select(Seeds, Gen.Int[2, 3], Gen.Int[1, 2], Gen.Int[2, 4])
        .Sample((seed, faults, checks, states) =>
        {
            RandomProblems random = new(seed);
            AssertBruteForce(random.Leaving(random.Repairing(faults, checks, states, perfect: 0.4)));
        }, iter: 300);

    [Fact]
    public void LivePlanner_ChecksThatLeaveTheUnitElsewhere_BoundsHoldTheOptimum() =>
        Gen.Select(Seeds, Gen.Int[1, 200_000])
        .Sample((seed, work) =>
        {
            RandomProblems random = new(seed);
            SequencingProblem problem = random.Leaving(random.Repairing(5, 5, 3, perfect: 0.3));
            double optimum = new ExactPlanner().Plan(problem, problem.Begin()).Minutes;
            Plan plan = new LivePlanner(work).Plan(problem, problem.Begin());
            Assert.InRange(optimum, plan.LowerBound - 1e-9, plan.Minutes + 1e-9);
        }, iter: 60);

    [Fact]
    public void ExactPlanner_TinyIsolateProblem_AgreesWithBruteForce() =>
        Gen.Select(Seeds, Gen.Int[1, 3], Gen.Int[0, 2])
        .Sample((seed, faults, checks) => AssertBruteForce(new RandomProblems(seed).Isolating(faults, checks)),
            iter: 100);

    [Fact]
    public void LivePlanner_Bounds_HoldTheOptimumWhateverTheWork() => Gen.Select(Seeds, Gen.Int[1, 200_000])
        .Sample((seed, work) =>
        {
            SequencingProblem problem = new RandomProblems(seed).Repairing(5, 5, 3, perfect: 0.3);
            double optimum = new ExactPlanner().Plan(problem, problem.Begin()).Minutes;
            Plan plan = new LivePlanner(work).Plan(problem, problem.Begin());
            Assert.InRange(optimum, plan.LowerBound - 1e-9, plan.Minutes + 1e-9);
            Assert.Equal(plan.Step, plan.Options[0].Step);
        }, iter: 60);

    [Fact]
    public void LivePlanner_SameProblemTwice_PlansTheSame() => Seeds.Sample(seed =>
    {
        SequencingProblem problem = new RandomProblems(seed).Repairing(8, 10, 3, perfect: 0.3);
        Plan first = new LivePlanner(100_000).Plan(problem, problem.Begin());
        Plan second = new LivePlanner(100_000).Plan(problem, problem.Begin());
        Assert.Equal(first.Step, second.Step);
        Assert.Equal(first.Options.ToArray(), second.Options.ToArray());
        Assert.Equal(first.Work, second.Work);
    }, iter: 20);

    // Other instances than those of the file, of the same kinds; own bars.
    [Theory]
    [InlineData("noisy", 6, 6, 1, 0.0)]
    [InlineData("access", 5, 6, 4, 0.4)]
    [InlineData("perfect", 7, 8, 1, 1.0)]
    [InlineData("large", 12, 14, 4, 1.0)]
    public void LivePlanner_FreshRepairProblems_StaysNearTheOptimum(
        string kind, int faults, int checks, int states, double perfect) =>
        AssertNearTheOptimum(kind, seed => new RandomProblems(seed).Repairing(faults, checks, states, perfect));

    [Theory]
    [InlineData("perfect", 7, 8)]
    [InlineData("large", 12, 12)]
    public void LivePlanner_FreshIsolateProblems_StaysNearTheOptimum(string kind, int faults, int checks) =>
        AssertNearTheOptimum(kind, seed => new RandomProblems(seed).Isolating(faults, checks));

    private void AssertNearTheOptimum(string kind, Func<int, SequencingProblem> draw)
    {
        List<double> ratios = [];
        for (int seed = 1; seed <= 12; seed++)
        {
            SequencingProblem problem = draw(seed);
            Plan exact = new ExactPlanner().Plan(problem, problem.Begin());
            Assert.True(exact.IsExact, $"{kind} seed {seed}");
            ratios.Add(new PolicyEvaluator(problem, new LivePlanner()).Minutes(problem.Begin()) / exact.Minutes);
        }

        output.WriteLine($"{kind}: mean {ratios.Average():0.00000}, worst {ratios.Max():0.00000}");
        Assert.InRange(ratios.Average(), 1 - 1e-9, 1.001);
        Assert.InRange(ratios.Max(), 1 - 1e-9, 1.02);
    }

    private static void AssertBruteForce(SequencingProblem problem)
    {
        Plan plan = new ExactPlanner().Plan(problem, problem.Begin());
        double mass = problem.Faults.Sum(fault => fault.Weight);
        Assert.True(plan.IsExact);
        Assert.Equal(BruteForce.Minutes(problem) / mass, plan.Minutes, 1e-9);
        Assert.Equal(plan.Minutes, new PolicyEvaluator(problem, new ExactPlanner()).Minutes(problem.Begin()), 1e-9);
    }
}
