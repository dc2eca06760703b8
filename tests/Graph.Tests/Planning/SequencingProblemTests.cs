using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;

namespace DxAssistant.Graph.Tests.Planning;

public sealed class SequencingProblemTests
{
    private static readonly Fault A = Parts.Fault("a");
    private static readonly Repair Ra = Parts.Repair("ra", 10, "a");

    [Fact]
    public void SequencingProblem_NoFault_Throws() => AssertRefused([], [], []);

    [Fact]
    public void SequencingProblem_PriorZero_Throws() => AssertRefused([A with { Weight = 0 }], [], [Ra]);

    [Fact]
    public void SequencingProblem_FaultTwice_Throws() => AssertRefused([A, A], [], [Ra]);

    [Fact]
    public void SequencingProblem_FaultWithoutRepair_Throws() => AssertRefused([A, Parts.Fault("b")], [], [Ra]);

    [Fact]
    public void SequencingProblem_RepairOfUnknownFault_Throws() =>
        AssertRefused([A], [], [Ra, Parts.Repair("rb", 10, "b")]);

    [Fact]
    public void SequencingProblem_UnknownAccess_Throws() =>
        AssertRefused([A], [Parts.Check("c", 1, 0) with { Access = [new AccessId("roof")] }], [Ra]);

    [Fact]
    public void SequencingProblem_NegativeMinutes_Throws() => AssertRefused([A], [Parts.Check("c", -1, 0)], [Ra]);

    [Fact]
    public void SequencingProblem_RowThatDoesNotSumToOne_Throws() =>
        AssertRefused([A], [Parts.Check("c", 1, 0) with { EveryOtherFault = [0.5, 0.4] }], [Ra]);

    [Fact]
    public void SequencingProblem_NoWayBetweenStates_Throws()
    {
        AccessStates cut = new(
            [new AccessState(Parts.Any, Role.Anyone), new AccessState(new AccessId("roof"), Role.Anyone)], [],
            Parts.Any);
        Assert.Throws<ArgumentException>(() => new SequencingProblem(Objective.Repair, [A], [], [Ra], cut));
    }

    [Fact]
    public void Isolate_NoCheckTellsTheFaultsApart_PlansNothing()
    {
        SequencingProblem problem = new(
            Objective.Isolate, [A, Parts.Fault("b")], [Parts.Check("c", 1, 0.5)], [], AccessStates.OnlyOne);
        Plan plan = new ExactPlanner().Plan(problem, problem.Begin());
        Assert.IsType<PlannedStep.Nothing>(plan.Step);
        Assert.Equal(0, plan.Minutes);
        Assert.Empty(plan.Options);
    }

    // Two of the three faults look the same to every check: only one check is of use, whatever Huffman's code would
    // ask for.
    [Fact]
    public void Isolate_FaultsThatLookTheSame_StopsWhenNoCheckHelps()
    {
        SequencingProblem problem = new(
            Objective.Isolate, [A, Parts.Fault("b"), Parts.Fault("c")],
            [Parts.Check("only-a", 4, 0, ("a", 1)), Parts.Check("only-a-too", 7, 0, ("a", 1))], [],
            AccessStates.OnlyOne);
        Plan plan = new ExactPlanner().Plan(problem, problem.Begin());
        Assert.Equal(4, plan.Minutes);
        Assert.Equal("only-a", plan.Step.Name());
    }

    private static void AssertRefused(Fault[] faults, Check[] checks, Repair[] repairs) =>
        Assert.Throws<ArgumentException>(() =>
            new SequencingProblem(Objective.Repair, faults, checks, repairs, AccessStates.OnlyOne));
}
