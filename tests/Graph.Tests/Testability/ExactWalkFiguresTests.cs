using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Graph.Planning.Baselines;
using DxAssistant.Graph.Testability;

namespace DxAssistant.Graph.Tests.Testability;

/// <summary>Exact figures of walks that can be gone through by hand.</summary>
public sealed class ExactWalkFiguresTests
{
    private static readonly AccessId Open = new("open");

    // No check, four faults of 0.4, 0.3, 0.2 and 0.1, repaired in this order at 10 min each; the first two repairs
    // change a part.
    [Fact]
    public void Figures_RepairsInTurn_CountWhatWasInVain()
    {
        WalkFigures walks = Exact(
            [Parts.Fault("a", 0.4), Parts.Fault("b", 0.3), Parts.Fault("c", 0.2), Parts.Fault("d", 0.1)], [],
            [Cheap("ra", "a"), Cheap("rb", "b"), Parts.Repair("rc", 10, "c"), Parts.Repair("rd", 10, "d")]);
        Assert.Equal(0.3 + 2 * 0.2 + 3 * 0.1, walks.RepairsInVain.Value, 1e-12);
        Assert.Equal(0.3 + 2 * (0.2 + 0.1), walks.PartsInVain.Value, 1e-12);
        Assert.Equal(10 * (1 + 0.6 + 0.3 + 0.1), walks.Minutes.Value, 1e-12);
        Assert.Equal([0.4, 0.7, 0.9], walks.IsolatedTo.Select(share => Math.Round(share.Value, 12)));
        Assert.Equal(0, walks.HandedOver.Value);
    }

    // The repair of a fault that is not there, then the case goes to somebody else; handing over is no repair and takes
    // no part.
    [Fact]
    public void Figures_FaultWithoutRepair_IsHandedOver()
    {
        WalkFigures walks = Exact([Parts.Fault("a", 0.7), Parts.Fault("b", 0.3)], [], [Part("ra", "a")]);
        Assert.Equal(0.3, walks.HandedOver.Value, 1e-12);
        Assert.Equal(0.3, walks.RepairsInVain.Value, 1e-12);
        Assert.Equal(0.3, walks.PartsInVain.Value, 1e-12);
        Assert.Equal([0.7, 0.7, 0.7], walks.IsolatedTo.Select(share => Math.Round(share.Value, 12)));
    }

    // The check is made with the casing open, 4 min from where work begins: 4 + 3, and then the repair of what it
    // shows.
    [Fact]
    public void Figures_CheckInAnotherState_TakesTheWayThere()
    {
        AccessStates access = new([new(Parts.Any, Role.Anyone), new(Open, Role.Anyone)],
            [new(Parts.Any, Open, 4), new(Open, Parts.Any, 6)], Parts.Any);
        Check look = Parts.Check("look", 3, 0, ("a", 1)) with { Access = [Open] };
        Repair[] repairs = [Parts.Repair("ra", 100, "a") with { Access = [Open] }, Parts.Repair("rb", 50, "b")
            with { Access = [Open] }];
        WalkFigures walks = Exact([Parts.Fault("a"), Parts.Fault("b")], [look], repairs, access);
        Assert.Equal(1, walks.Checks.Value, 1e-12);
        Assert.Equal(4 + 3 + (100 + 50) / 2.0, walks.Minutes.Value, 1e-12);
    }

    // By hand: fault b gets ra in vain first, a part of 30 min for nothing.
    [Fact]
    public void Play_PartInVain_IsPricedAndNotSpent()
    {
        SequencingProblem problem = new(
            Objective.Repair, [Parts.Fault("a", 0.9), Parts.Fault("b", 0.1)], [],
            [Part("ra", "a"), Parts.Repair("rb", 20, "b")], AccessStates.OnlyOne);
        SessionSimulation simulation = new(problem, new RepairOnly(), new Draws(1));
        SessionTally found = simulation.Play(new FaultId("a"), unit: 1), late =
            simulation.Play(new FaultId("b"), unit: 1);
        Assert.Equal((1, 0, 0, 10.0, 10.0, true),
            (found.Repairs, found.RepairsInVain, found.PartsInVain, found.Minutes, found.Priced, found.Mended));
        Assert.Equal((2, 1, 1, 30.0, 60.0, true),
            (late.Repairs, late.RepairsInVain, late.PartsInVain, late.Minutes, late.Priced, late.Mended));
    }

    [Fact]
    public void Play_FaultThatTheProblemDoesNotHave_Throws()
    {
        SequencingProblem problem =
            new(Objective.Repair, [Parts.Fault("a")], [], [Part("ra", "a")], AccessStates.OnlyOne);
        Assert.Throws<ArgumentException>(() =>
            new SessionSimulation(problem, new RepairOnly(), new Draws(1)).Play(new FaultId("z"), unit: 1));
    }

    // So cheap a part that it does not change the order.
    private static Repair Cheap(string id, string fault) => Parts.Repair(id, 10, fault) with { WrongMinutes = 0.01 };

    private static Repair Part(string id, string fault) => Parts.Repair(id, 10, fault) with { WrongMinutes = 30 };

    private static WalkFigures Exact(Fault[] faults, Check[] checks, Repair[] repairs, AccessStates? access = null)
    {
        FaultGraph graph = FaultGraph.Build(
            faults, [Parts.Symptom("s", [.. faults.Select(fault => (fault.Id.Value, 1.0))])], checks, repairs, access
                ?? AccessStates.OnlyOne);
        return new Assessment(graph, new Situation(new Role("technician", 2), Parts.Any), new LivePlanner())
        {
            MostPositions = 50,
        }
            .Assess(0, 1).Symptoms[0].Walks!;
    }
}
