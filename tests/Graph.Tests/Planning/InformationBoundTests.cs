using System.Collections.Immutable;
using CsCheck;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Graph.Planning.Search;
using Xunit.Abstractions;
using Check = DxAssistant.Graph.Model.Check;

namespace DxAssistant.Graph.Tests.Planning;

/// <summary>CsCheck prints the seed of a case that fails.</summary>
public sealed class InformationBoundTests(ITestOutputHelper output)
{
    private static readonly Gen<int> Seeds = Gen.Int[0, 1_000_000];

    // Wrong parts priced from nothing to far above every check, so that failed repairs count in every measure.
    [Fact]
    public void TighterFrom_RepairProblem_IsNeverAboveTheOptimum() =>
        Gen.Select(Seeds, Gen.Int[2, 5], Gen.Int[1, 5], Gen.Int[1, 3],
            Gen.Int[0, 3]).Sample((seed, faults, checks, states, dear) =>
        {
            SequencingProblem problem = new RandomProblems(seed).Repairing(faults, checks, states, perfect: 0.4)
                .WithWrongMinutes(dear * dear * 20);
            AssertBelow(problem);
        }, iter: 400);

    [Fact]
    public void TighterFrom_IsolateProblem_IsNeverAboveTheOptimum() => Gen.Select(Seeds, Gen.Int[2, 5], Gen.Int[0, 4])
        .Sample((seed, faults, checks) => AssertBelow(new RandomProblems(seed).Isolating(faults, checks)), iter: 200);

    [Theory]
    [MemberData(nameof(Ids))]
    public void TighterFrom_KnownInstance_IsNeverAboveTheOptimum(string id)
    {
        SequencingInstance instance = SequencingFile.Instance(id);
        Assert.InRange(Bounds(instance.Problem).Tighter, 0, instance.ExpectedCost + 1e-9);
    }

    // How much of the optimum the bounds hold before anything is searched; mean and least of each type.
    [Theory]
    [InlineData("published")]
    [InlineData("perfect")]
    [InlineData("noisy")]
    [InlineData("access")]
    [InlineData("large")]
    [InlineData("trap")]
    public void TighterFrom_KnownInstances_HoldsMoreThanTheQuickBound(string type)
    {
        (double Quick, double Tighter)[] shares = [.. SequencingFile.Instances.Where(instance => instance.Type == type)
            .Select(instance => (Bounds(instance.Problem), instance.ExpectedCost))
            .Select(found => (found.Item1.Quick / found.ExpectedCost, found.Item1.Tighter / found.ExpectedCost))];
        output.WriteLine(
            $"| {type} | {shares.Length} | {shares.Average(share => share.Quick):0.000} / {shares.Min(share => share.Quick):0.000} "
            + $"| {shares.Average(share => share.Tighter):0.000} / {shares.Min(share => share.Tighter):0.000} |");
        Assert.True(shares.Average(share => share.Tighter) >= shares.Average(share => share.Quick));
    }

    public static TheoryData<string> Ids() => SequencingFile.Ids();

    // Source: J. Massey's form of Shannon's noiseless coding theorem: 8 equally likely faults need 3 clean halvings,
    // and a bound from bits meets them (from memory).
    [Fact]
    public void TighterFrom_EightEqualFaultsHalved_IsThreeChecks()
    {
        Fault[] faults = [.. Enumerable.Range(0, 8).Select(number => Parts.Fault($"f{number}"))];
        Check[] halves = [.. Enumerable.Range(0, 3).Select(bit => Parts.Check(
            $"c{bit}", 1, 0,
            [.. faults.Where((_, number) => (number >> bit & 1) == 1).Select(fault => (fault.Id.Value, 1.0))]))];
        Assert.Equal(3,
            Bounds(new SequencingProblem(Objective.Isolate, faults, halves, [], AccessStates.OnlyOne)).Tighter, 1e-6);
    }

    // With parts too dear to guess, the checks' minutes must be in the bound, and the way to where they are done.
    [Fact]
    public void TighterFrom_DearPartsAndChecksBehindACover_CountsTheWayOnce()
    {
        ImmutableArray<AccessId> ids = [new("closed"), new("open")];
        Fault[] faults = [.. Enumerable.Range(0, 4).Select(number => Parts.Fault($"f{number}"))];
        AccessStates access = new(
            ids.Select(id => new AccessState(id, Role.Anyone)), [new(ids[0], ids[1], 20), new(ids[1], ids[0], 5)],
            ids[0], ids[0]);
        Check[] checks = [.. Enumerable.Range(0, 2).Select(bit => Parts.Check(
            $"c{bit}", 4, 0,
            [.. faults.Where((_, number) => (number >> bit & 1) == 1).Select(fault => (fault.Id.Value, 1.0))])
            with { Access = [ids[1]] })];
        Repair[] repairs = [.. faults.Select(fault => Parts.Repair($"r-{fault.Id}", 10, fault.Id.Value)
            with { Access = [ids[0]], WrongMinutes = 1000 })];
        SequencingProblem problem = new(Objective.Repair, faults, checks, repairs, access);

        // 20 to open, 2 × 4, 5 to close, 10 for the repair.
        Assert.Equal(43, new ExactPlanner().Plan(problem, problem.Begin()).Minutes, 1e-9);
        Assert.Equal(43, Bounds(problem).Tighter, 1e-6);
    }

    [Fact]
    public void Plan_SearchCutShort_ReportsTheTighterBound()
    {
        SequencingProblem problem = new RandomProblems(7).Repairing(30, 20, 3, perfect: 0.2).WithWrongMinutes(240);
        Plan plan = new LivePlanner().Plan(problem, problem.Begin());
        output.WriteLine(
            $"at most {plan.Minutes:0.0}, at least {plan.LowerBound:0.0}, quick bound {Bounds(problem).Quick:0.0}");
        Assert.False(plan.IsExact);
        Assert.True(plan.LowerBound >= Bounds(problem).Tighter);
        Assert.True(plan.LowerBound > Bounds(problem).Quick + 5);
    }

    private static void AssertBelow(SequencingProblem problem)
    {
        double optimum = new ExactPlanner().Plan(problem, problem.Begin()).Minutes;
        Assert.InRange(Bounds(problem).Tighter, 0, optimum * (1 + 1e-12) + 1e-9);
    }

    private static (double Quick, double Tighter) Bounds(SequencingProblem problem)
    {
        double mass = problem.Faults.Sum(fault => fault.Weight);
        double[] weights = [.. problem.Faults.Select(fault => fault.Weight / mass)];
        ulong[] useful = [(1UL << problem.Checks.Length) - 1];
        int state = problem.Access.IndexOf(problem.Access.Start);
        LowerBound bound = new(problem);
        return (bound.From(weights, useful, state), bound.TighterFrom(weights, useful, state));
    }
}
