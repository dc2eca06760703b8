using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Graph.Planning.Trees;

namespace DxAssistant.Graph.Tests.Planning.Trees;

public sealed class LimitedStrategyTests
{
    private const double Tolerance = 1e-9;

    [Fact]
    public void Exact_SmallProblems_AreAsGoodAsTheBestOfAllTrees()
    {
        for (int seed = 1; seed <= 15; seed++)
        {
            SequencingProblem problem = Small(seed);
            LimitedStrategy strategy = LimitedStrategy.Exact(problem, 3);
            for (int checks = 0; checks <= 3; checks++)
                Assert.True(Math.Abs(LimitedBruteForce.Minutes(problem, checks) - strategy.Minutes(checks)) < Tolerance,
                    $"seed {seed}, {checks} checks");
        }
    }

    [Fact]
    public void Exact_RoomForAllChecks_IsTheOptimumWithoutALimit()
    {
        for (int seed = 1; seed <= 15; seed++)
        {
            SequencingProblem problem = Small(seed);
            double free = new ExactPlanner().Plan(problem, problem.Begin()).Minutes;
            Assert.Equal(free, LimitedStrategy.Exact(problem, 12).Minutes(12), Tolerance);
        }
    }

    [Fact]
    public void Minutes_MoreChecks_NeverTakeLonger()
    {
        for (int seed = 1; seed <= 20; seed++)
        {
            SequencingProblem problem = new RandomProblems(seed).Repairing(6, 5, 2, 0.5);
            LimitedStrategy strategy = new(problem, 8, width: 2, leastShare: 0.01);
            for (int checks = 1; checks <= 8; checks++)
                Assert.True(strategy.Minutes(checks) <= strategy.Minutes(checks - 1));
        }
    }

    [Fact]
    public void Minutes_NotAllWaysWeighed_LieBetweenOptimumAndRepairsAlone()
    {
        for (int seed = 1; seed <= 15; seed++)
        {
            SequencingProblem problem = Small(seed);
            double best = LimitedStrategy.Exact(problem, 2)
                .Minutes(2), narrow = new LimitedStrategy(problem, 2, 1, 0).Minutes(2);
            Assert.InRange(narrow, best - Tolerance, new LimitedStrategy(problem, 0, 1, 0).Minutes(0) + Tolerance);
        }
    }

    [Fact]
    public void Next_FollowedDownTheTree_WritesNoMoreChecksThanAllowed()
    {
        for (int seed = 1; seed <= 20; seed++)
        {
            SequencingProblem problem = new RandomProblems(seed).Repairing(6, 5, 2, 0.5);
            LimitedStrategy strategy = new(problem, 4, 2, 0);
            WalkNode tree = new WalkTree(problem, strategy.Next).Grow(1_000, checks: 4);
            Assert.InRange(tree.Checks, 0, 4);
        }
    }

    [Fact]
    public void Exact_WithProofs_IsAsGoodAsTheBestTreeInWhichNoRepairComesBeforeItsProof()
    {
        for (int seed = 1; seed <= 15; seed++)
        {
            SequencingProblem problem = Small(seed);
            CheckId Proof(RepairId repair) => problem.Checks[problem.PlaceOf(repair) % problem.Checks.Length].Id;
            LimitedStrategy strategy = LimitedStrategy.Exact(problem, 3,
                new ProofRule((here, repair) => Open(problem, here, Proof(repair)), 200));
            for (int checks = 0; checks <= 3; checks++)
                Assert.Equal(LimitedBruteForce.Minutes(problem, checks, Proof, leaving: 200), strategy.Minutes(checks),
                    Tolerance);
        }
    }

    [Fact]
    public void Next_WithProofs_WritesNoRepairBeforeItsProof()
    {
        for (int seed = 1; seed <= 20; seed++)
        {
            SequencingProblem problem = new RandomProblems(seed).Repairing(6, 5, 2, 0.5);
            ProofRule rule =
                new((here, repair) => Open(problem, here, problem.Checks[problem.PlaceOf(repair) % 5].Id), 300);
            LimitedStrategy strategy = new(problem, 12, 2, 0, rule: rule);
            TreeStep Watched(Position here, int checks)
            {
                TreeStep step = strategy.Next(here, checks);
                if (step.Step is PlannedStep.DoRepair repair) Assert.Null(rule.Before(here, repair.Repair));
                return step;
            }

            Assert.InRange(new WalkTree(problem, Watched).Grow(1_000, checks: 12).Checks, 1, 12);
        }
    }

    private static CheckId? Open(SequencingProblem problem, Position here, CheckId check) =>
        !here.IsUsed(check) && problem.Checks[problem.PlaceOf(check)].Separates(
            [.. problem.Faults.Select(fault => fault.Id).Where(fault => here.ProbabilityOf(fault) > 0)]) ? check : null;

    [Fact]
    public void LimitedStrategy_ProblemWithoutRepairs_Throws() =>
        Assert.Throws<ArgumentException>(() => LimitedStrategy.Exact(new RandomProblems(1).Isolating(3, 2), 2));

    [Theory]
    [InlineData(-1, 1, 0)]
    [InlineData(1, 0, 0)]
    [InlineData(1, 1, 1.1)]
    [InlineData(1, 1, double.NaN)]
    public void LimitedStrategy_NumberOutsideItsRange_Throws(int most, int width, double leastShare) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new LimitedStrategy(Small(1), most, width, leastShare));

    [Theory]
    [InlineData(-1)]
    [InlineData(3)]
    public void Minutes_NumberOfChecksOutsideItsRange_Throws(int checks) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => LimitedStrategy.Exact(Small(1), 2).Minutes(checks));

    private static SequencingProblem Small(int seed) =>
        new RandomProblems(seed).Repairing(faults: 2 + seed % 3, checks: 3, states: 1 + seed % 2, perfect: 0.5);
}
