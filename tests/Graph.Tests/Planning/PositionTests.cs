using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;

namespace DxAssistant.Graph.Tests.Planning;

public sealed class PositionTests
{
    private static readonly OutcomeId Fail = new("fail");

    private static readonly SequencingProblem Problem = new(
        Objective.Repair,
        [Parts.Fault("a", 0.5), Parts.Fault("b", 0.5)],
        [Parts.Check("c", 3, 0.2, ("a", 0.6)), Parts.Check("certain", 3, 0, ("a", 1))],
        [Parts.Repair("ra", 10, "a"), Parts.Repair("rb", 20, "b")],
        AccessStates.OnlyOne);

    [Fact]
    public void Saw_Outcome_MultipliesTheLikelihood() =>
        Assert.Equal(0.75, Problem.Begin().Saw(new CheckId("c"), Fail).ProbabilityOf(new FaultId("a")), 1e-12);

    [Fact]
    public void Saw_CheckThatLeavesTheUnitElsewhere_StandsThere()
    {
        AccessId off = new("off"), on = new("on");
        AccessStates access = new([new AccessState(off, Role.Anyone), new AccessState(on, Role.Anyone)],
            [new AccessMove(off, on, 4), new AccessMove(on, off, 9)], off);
        SequencingProblem problem = new(
            Objective.Repair, [Parts.Fault("a"), Parts.Fault("b")],
            [Parts.Check("c", 14, 0, ("a", 1)) with { Access = [off], Leaves = on }],
            [Parts.Repair("ra", 10, "a") with { Access = [off] }, Parts.Repair("rb", 20, "b") with { Access = [off] }],
            access);
        Assert.All(problem.Begin().Foresee(new CheckId("c"), off), seen => Assert.Equal(on, seen.After.Access));
        // 14 for the check, 9 for the way back, then half of 10 and 20.
        Assert.Equal(14 + 9
            + 15,
            new ExactPlanner().Plan(problem, problem.Begin()).Options.Single(
                option => option.Step.Name() == "c").Minutes, 1e-9);
    }

    [Fact]
    public void Saw_Outcome_UsesTheCheckUp()
    {
        Position after = Problem.Begin().Saw(new CheckId("c"), Fail);
        Plan plan = new ExactPlanner().Plan(Problem, after);
        Assert.DoesNotContain(plan.Options, option => option.Step.Name() == "c");
    }

    [Fact]
    public void Without_SkippedCheck_IsNeverPlanned()
    {
        Plan plan = new ExactPlanner().Plan(Problem, Problem.Begin().Without(new CheckId("certain")));
        Assert.DoesNotContain(plan.Options, option => option.Step.Name() == "certain");
    }

    [Fact]
    public void Failed_Repair_ExcludesItsFaults() =>
        Assert.Equal(1, Problem.Begin().Failed(new RepairId("ra"), Parts.Any).ProbabilityOf(new FaultId("b")));

    [Fact]
    public void Foresee_Check_TellsEachOutcomeAndTheBeliefThen()
    {
        ImmutableArray<ForeseenOutcome> foreseen = Problem.Begin().Foresee(new CheckId("c"), Parts.Any);
        Assert.Equal(["pass", "fail"], foreseen.Select(outcome => outcome.Outcome.Value));
        Assert.Equal(0.4, foreseen[1].Probability, 1e-12);
        Assert.Equal(0.75, foreseen[1].After.ProbabilityOf(new FaultId("a")), 1e-12);
    }

    [Fact]
    public void Saw_ImpossibleOutcome_Throws() => Assert.Throws<ArgumentException>(() =>
        Problem.Begin().Excluding(new FaultId("a")).Saw(new CheckId("certain"), Fail));

    [Fact]
    public void Saw_UnknownOutcome_Throws() =>
        Assert.Throws<ArgumentException>(() => Problem.Begin().Saw(new CheckId("c"), new OutcomeId("maybe")));

    [Fact]
    public void Saw_UnknownCheck_Throws() =>
        Assert.Throws<ArgumentException>(() => Problem.Begin().Saw(new CheckId("unknown"), Fail));

    [Fact]
    public void Failed_LastRepair_Throws() => Assert.Throws<ArgumentException>(() =>
        Problem.Begin().Excluding(new FaultId("b")).Failed(new RepairId("ra"), Parts.Any));

    [Fact]
    public void Excluding_LastFault_Throws() => Assert.Throws<ArgumentException>(() =>
        Problem.Begin().Excluding(new FaultId("b")).Excluding(new FaultId("a")));

    [Fact]
    public void At_UnknownState_Throws() =>
        Assert.Throws<ArgumentException>(() => Problem.Begin().At(new AccessId("unknown")));
}
