using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;

namespace DxAssistant.Graph.Tests.Planning;

public sealed class CaseProblemTests
{
    private static readonly Role Owner = new("owner", 0);
    private static readonly Role Technician = new("technician", 2);
    private static readonly AccessId Closed = new("closed");
    private static readonly AccessId Open = new("open");
    private static readonly CheckId Look = new("look");
    private static readonly CheckId Meter = new("meter");
    private static readonly RepairId Clean = new("clean");
    private static readonly RepairId Swap = new("swap");

    [Fact]
    public void From_Technician_PlansEverything()
    {
        CaseProblem made = CaseProblem.From(Graph(), Graph().Believe([]), new Situation(Technician, Closed));
        Assert.Equal([Look, Meter], made.Problem!.Checks.Select(check => check.Id));
        Assert.Equal([Clean, Swap], made.Problem.Repairs.Select(repair => repair.Id));
        Assert.Empty(made.OutOfReach);
    }

    [Fact]
    public void From_Owner_PlansOnlyWhatAnOwnerMayDo()
    {
        CaseProblem made = CaseProblem.From(Graph(), Graph().Believe([]), new Situation(Owner, Closed));
        Assert.Equal([Look], made.Problem!.Checks.Select(check => check.Id));
        Assert.Equal([Closed], made.Problem.Access.All.Select(state => state.Id));
        Assert.Equal([Clean, RepairId.HandOver], made.Problem.Repairs.Select(repair => repair.Id));
        Assert.Equal([new OutOfReach.NeedsRole(new FaultId("board"), Swap, Technician)], made.OutOfReach.ToArray());
    }

    [Fact]
    public void From_OwnerWhoCannotOpenTheUnit_NamesTheWay()
    {
        FaultGraph graph = Graph(swapBy: Owner);
        CaseProblem made = CaseProblem.From(graph, graph.Believe([]), new Situation(Owner, Closed));
        Assert.Equal([new OutOfReach.NoWay(new FaultId("board"), Swap)], made.OutOfReach.ToArray());
    }

    [Fact]
    public void From_BarredCheckAndRepair_PlansNeither()
    {
        Situation situation = new(Technician, Closed) { BarredChecks = [Meter], BarredRepairs = [Swap] };
        CaseProblem made = CaseProblem.From(Graph(), Graph().Believe([]), situation);
        Assert.Equal([Look], made.Problem!.Checks.Select(check => check.Id));
        Assert.Equal([new OutOfReach.Barred(new FaultId("board"), Swap)], made.OutOfReach.ToArray());
    }

    [Fact]
    public void From_RefusedAccess_PlansNothingThere()
    {
        Situation situation = new(Technician, Closed) { RefusedAccess = [Open] };
        CaseProblem made = CaseProblem.From(Graph(), Graph().Believe([]), situation);
        Assert.Equal([Look], made.Problem!.Checks.Select(check => check.Id));
        Assert.Equal([new OutOfReach.NoWay(new FaultId("board"), Swap)], made.OutOfReach.ToArray());
    }

    [Fact]
    public void From_FaultWithoutRepair_IsHandedOver()
    {
        FaultGraph graph = Graph(new Fault(FaultId.NoneOfThese, 1));
        CaseProblem made = CaseProblem.From(graph, graph.Believe([]), new Situation(Technician, Closed));
        Assert.Equal([new OutOfReach.NoRepair(FaultId.NoneOfThese)], made.OutOfReach.ToArray());
        Assert.Contains(made.Problem!.Repairs, repair => repair.Id == RepairId.HandOver);
    }

    [Fact]
    public void From_NothingButAFaultOutOfReach_PlansTheHandOverWhereTheUnitStands()
    {
        FaultGraph graph = Graph();
        Belief belief = graph.Believe([new Evidence.RepairFailed(Clean)]);
        CaseProblem made = CaseProblem.From(graph, belief, new Situation(Owner, Closed));
        PlannedStep step = new LivePlanner().Next(made.Problem!, made.Problem!.Begin());
        Assert.Equal(new PlannedStep.DoRepair(RepairId.HandOver, Closed), step);
    }

    [Fact]
    public void From_CheckAnswered_IsNotPlannedAgain()
    {
        FaultGraph graph = Graph();
        Belief belief = graph.Believe([Evidence.Seen(graph.Find(Look)!, new OutcomeId("pass"))]);
        CaseProblem made = CaseProblem.From(graph, belief, new Situation(Technician, Closed));
        Assert.Equal([Meter], made.Problem!.Checks.Select(check => check.Id));
    }

    [Fact]
    public void From_ExhaustedBelief_HasNoProblem()
    {
        FaultGraph graph = Graph();
        Belief belief = graph.Believe([new Evidence.RepairFailed(Clean), new Evidence.RepairFailed(Swap)]);
        Assert.Null(CaseProblem.From(graph, belief, new Situation(Technician, Closed)).Problem);
    }

    [Fact]
    public void From_UnitStandsOpen_BeginsThere()
    {
        CaseProblem made = CaseProblem.From(Graph(), Graph().Believe([]), new Situation(Technician, Open));
        Assert.Equal(Open, made.Problem!.Begin().Access);
    }

    [Fact]
    public void From_Isolate_AsksForNoRepair()
    {
        Situation situation = new(Owner, Closed) { Objective = Objective.Isolate };
        CaseProblem made = CaseProblem.From(Graph(), Graph().Believe([]), situation);
        Assert.Empty(made.Problem!.Repairs);
        Assert.Equal("look", new LivePlanner().Next(made.Problem, made.Problem.Begin()).Name());
    }

    [Fact]
    public void From_UnknownAccess_Throws() => Assert.Throws<ArgumentException>(() =>
        CaseProblem.From(Graph(), Graph().Believe([]), new Situation(Owner, new AccessId("roof"))));

    // The cut plan against the best plan for everything, of problems drawn from seeds, one of whose faults is next to
    // impossible.
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void From_FaultNextToImpossible_LosesNoMoreThanItSays(int seed)
    {
        SequencingProblem drawn = new RandomProblems(seed).Repairing(5, 4, 2, 0.5);
        ImmutableArray<Fault> faults =
            [drawn.Faults[0] with { Weight = drawn.Faults.Sum(fault => fault.Weight) * 4e-7 }, .. drawn.Faults.Skip(1)];
        FaultGraph graph = FaultGraph.Build(faults, [], drawn.Checks, drawn.Repairs, drawn.Access);
        Belief belief = graph.Believe([]);
        CaseProblem cut = CaseProblem.From(graph, belief, new Situation(Technician, drawn.Access.Start));
        SequencingProblem whole = new(
            Objective.Repair, belief.Ranked.OrderBy(fault => fault.Id)
                .Select(fault => new Fault(fault.Id, fault.Probability)), graph.Checks, graph.Repairs, drawn.Access);

        (double least, double planned) = (Least(whole), Least(cut.Problem!) * (1 - cut.LeftOut));
        Assert.Equal(faults.Length - 1, cut.Problem!.Faults.Length);
        Assert.InRange(cut.LeftOut, 1e-7, CaseProblem.Negligible);
        Assert.InRange(least, planned - 1e-9, planned + cut.MostLost + 1e-9);
        Assert.InRange(cut.MostLost, 0, 1);
    }

    [Fact]
    public void At_PositionAfterACheck_IsTheProblemOfTheBelief()
    {
        FaultGraph graph = Graph();
        Situation situation = new(Technician, Closed);
        SequencingProblem before = CaseProblem.From(graph, graph.Believe([]), situation).Problem!;
        Position here = before.Begin().Saw(Look, new OutcomeId("fail"));
        SequencingProblem there = CaseProblem.At(graph, before, here, situation).Problem!;
        SequencingProblem believed = CaseProblem.From(
            graph, graph.Believe([Evidence.Seen(graph.Find(Look)!, new OutcomeId("fail"))]), situation).Problem!;
        Assert.Equal(believed.Checks.Select(check => check.Id), there.Checks.Select(check => check.Id));
        Assert.Equal(believed.Faults.Select(fault => Math.Round(fault.Weight, 12)),
            there.Faults.Select(fault => Math.Round(fault.Weight, 12)));
    }

    private static double Least(SequencingProblem problem) => new ExactPlanner().Plan(problem, problem.Begin()).Minutes;

    internal static FaultGraph Graph(params Fault[] more) => Graph(Technician, more);

    internal static FaultGraph Graph(Role swapBy, params Fault[] more) => FaultGraph.Build(
        [Parts.Fault("filter"), Parts.Fault("board"), .. more],
        [],
        [
            Parts.Check(Look.Value, 2, 0.2, ("filter", 0.9)) with { Access = [Closed], Who = Owner },
            Parts.Check(Meter.Value, 5, 0.1, ("board", 0.95)) with { Access = [Open], Who = Technician },
        ],
        [
            Parts.Repair(Clean.Value, 5, "filter") with { Access = [Closed], Who = Owner },
            Parts.Repair(Swap.Value, 45, "board") with { Access = [Open], Who = swapBy },
        ],
        new AccessStates(
            [new AccessState(Closed, Owner), new AccessState(Open, Technician)],
            [new AccessMove(Closed, Open, 10), new AccessMove(Open, Closed, 10)], Closed));
}
