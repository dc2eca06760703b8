using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Graph.Testability;

namespace DxAssistant.Graph.Tests.Testability;

public sealed class AssessmentTests
{
    private static readonly SymptomId Symptom = new("s");

    [Fact]
    public void Assess_FaultsThatLookTheSame_FormAGroup()
    {
        TestabilityReport report = Assess(Parts.Repair("ra", 10, "a"), Parts.Repair("rb", 10, "b"), Parts.Repair("rc", 10, "c"));
        AmbiguityGroup group = Assert.Single(report.ToldApartByNoCheck);
        Assert.Equal(["a", "b"], group.Faults.Select(fault => fault.Value));
        Assert.Equal(["ra", "rb"], group.Repairs.Select(repair => repair.Value));
    }

    [Fact]
    public void IsolatableTo_GroupThatNeedsTwoRepairs_CountsFromTwo()
    {
        SymptomFigures figures =
            Assess(Parts.Repair("ra", 10, "a"), Parts.Repair("rb", 10, "b"), Parts.Repair("rc", 10, "c")).Symptoms[0];
        Assert.Equal(1.0 / 3, figures.IsolatableTo(1), 1e-12);
        Assert.Equal(1, figures.IsolatableTo(2), 1e-12);
    }

    [Fact]
    public void IsolatableTo_OneRepairForTheGroup_CountsFromOne() =>
        Assert.Equal(1, Assess(Parts.Repair("rab", 10, "a", "b"), Parts.Repair("rc", 10, "c")).Symptoms[0].IsolatableTo(1), 1e-12);

    [Fact]
    public void Assess_CheckThatSeesOneFault_DetectsItsShare()
    {
        SymptomFigures figures = Assess(Parts.Repair("rab", 10, "a", "b"), Parts.Repair("rc", 10, "c")).Symptoms[0];
        Assert.Equal(3, figures.Faults);
        Assert.Equal(1.0 / 3, figures.Detected, 1e-12);
    }

    // One certain check of 1 min, then the one repair it points to: every session is the same but for the fault.
    [Fact]
    public void Assess_CertainCheck_EverySessionTakesOneCheckAndOneRepair()
    {
        SymptomFigures figures = Assess(Parts.Repair("rab", 10, "a", "b"), Parts.Repair("rc", 10, "c")).Symptoms[0];
        Assert.Equal(1, figures.MeanChecks);
        Assert.Equal(11, figures.MeanMinutes, 1e-12);
        Assert.Equal(0, figures.MeanRepairsInVain);
        Assert.Equal(1, figures.IsolatedTo(1));
    }

    [Fact]
    public void Assess_RepairsTriedInTurn_CountsThoseInVain()
    {
        SymptomFigures figures =
            Assess(Parts.Repair("ra", 10, "a"), Parts.Repair("rb", 10, "b"), Parts.Repair("rc", 10, "c")).Symptoms[0];
        Assert.InRange(figures.MeanRepairsInVain, 0.1, 0.6);
        Assert.InRange(figures.IsolatedTo(1), 0.4, 0.9);
        Assert.Equal(1, figures.IsolatedTo(2));
    }

    [Fact]
    public void Assess_FaultWithoutRepair_IsHandedOver()
    {
        SymptomFigures figures = Assess(Parts.Repair("rab", 10, "a", "b")).Symptoms[0];
        Assert.InRange(figures.HandedOver, 0.2, 0.5);
        Assert.Equal(1 - figures.HandedOver, figures.IsolatedTo(3), 1e-12);
    }

    [Fact]
    public void Assess_SameSeed_GivesTheSameSessions()
    {
        Repair[] repairs = [Parts.Repair("ra", 10, "a"), Parts.Repair("rb", 10, "b"), Parts.Repair("rc", 10, "c")];
        Assert.Equal(Assess(repairs).Symptoms[0].Sessions.ToArray(), Assess(repairs).Symptoms[0].Sessions.ToArray());
    }

    [Fact]
    public void Assess_NegativeSessions_Throws() => Assert.Throws<ArgumentOutOfRangeException>(() =>
        new Assessment(Graph(), Technician, new LivePlanner()).Assess(-1, 1));

    private static Situation Technician => new(new Role("technician", 2), Parts.Any);

    private static TestabilityReport Assess(params Repair[] repairs) =>
        new Assessment(Graph(repairs), Technician, new LivePlanner()).Assess(sessions: 200, seed: 42);

    private static FaultGraph Graph(params Repair[] repairs) => FaultGraph.Build(
        [Parts.Fault("a"), Parts.Fault("b"), Parts.Fault("c")],
        [Parts.Symptom(Symptom.Value, ("a", 1), ("b", 1), ("c", 1))],
        [Parts.Check("check", 1, 0, ("c", 1))],
        repairs, AccessStates.OnlyOne);
}
