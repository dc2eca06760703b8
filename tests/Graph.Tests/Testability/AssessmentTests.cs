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
        TestabilityReport report =
            Assess(Parts.Repair("ra", 10, "a"), Parts.Repair("rb", 10, "b"), Parts.Repair("rc", 10, "c"));
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
        Assert.Equal(1,
            Assess(Parts.Repair("rab", 10, "a", "b"), Parts.Repair("rc", 10, "c")).Symptoms[0].IsolatableTo(1), 1e-12);

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
        Assert.Equal(1, figures.Walks!.Checks.Value);
        Assert.Equal(11, figures.Walks.Minutes.Value, 1e-12);
        Assert.Equal(0, figures.Walks.RepairsInVain.Value);
        Assert.Equal(1, figures.Walks.IsolatedTo[0].Value);
    }

    [Fact]
    public void Assess_RepairsTriedInTurn_CountsThoseInVain()
    {
        SymptomFigures figures =
            Assess(Parts.Repair("ra", 10, "a"), Parts.Repair("rb", 10, "b"), Parts.Repair("rc", 10, "c")).Symptoms[0];
        Assert.InRange(figures.Walks!.RepairsInVain.Value, 0.1, 0.6);
        Assert.InRange(figures.Walks.IsolatedTo[0].Value, 0.4, 0.9);
        Assert.Equal(1, figures.Walks.IsolatedTo[1].Value);
    }

    [Fact]
    public void Assess_FaultWithoutRepair_IsHandedOver()
    {
        SymptomFigures figures = Assess(Parts.Repair("rab", 10, "a", "b")).Symptoms[0];
        Assert.InRange(figures.Walks!.HandedOver.Value, 0.2, 0.5);
        Assert.Equal(1 - figures.Walks.HandedOver.Value, figures.Walks.IsolatedTo[2].Value, 1e-12);
    }

    [Fact]
    public void Assess_SameSeed_GivesTheSameFigures()
    {
        Repair[] repairs = [Parts.Repair("ra", 10, "a"), Parts.Repair("rb", 10, "b"), Parts.Repair("rc", 10, "c")];
        WalkFigures first = Assess(repairs).Symptoms[0].Walks!, second = Assess(repairs).Symptoms[0].Walks!;
        Assert.Equal(first.Minutes, second.Minutes);
        Assert.Equal(first.IsolatedTo.ToArray(), second.IsolatedTo.ToArray());
    }

    // By hand: the check tells c from a and b. c, one in three: 1 + 10. a or b, two in three: 1 + 10, and half of them
    // 10 more.
    [Fact]
    public void Assess_FewPositions_IsExact()
    {
        WalkFigures walks =
            Exact(Parts.Repair("ra", 10, "a"), Parts.Repair("rb", 10, "b"), Parts.Repair("rc", 10, "c"));
        Assert.True(walks.IsExact);
        Assert.Equal(1, walks.Checks.Value, 1e-12);
        Assert.Equal(11 + 10.0 / 3, walks.Minutes.Value, 1e-12);
        Assert.Equal(1.0 / 3, walks.RepairsInVain.Value, 1e-12);
        Assert.Equal(2.0 / 3, walks.IsolatedTo[0].Value, 1e-12);
        Assert.Equal(1, walks.IsolatedTo[1].Value, 1e-12);
        Assert.Equal(0, walks.Minutes.HalfWidth);
    }

    [Fact]
    public void Assess_PlayedAndExact_AgreeWithinTheInterval()
    {
        Repair[] repairs = [Parts.Repair("ra", 10, "a"), Parts.Repair("rb", 25, "b")];
        WalkFigures exact = Exact(repairs), played = Assess(repairs).Symptoms[0].Walks!;
        Assert.InRange(exact.Minutes.Value, played.Minutes.Value - 2 * played.Minutes.HalfWidth, played.Minutes.Value
            + 2 * played.Minutes.HalfWidth);
        Assert.InRange(exact.HandedOver.Value, played.HandedOver.Value - 2 * played.HandedOver.HalfWidth,
            played.HandedOver.Value + 2 * played.HandedOver.HalfWidth);
    }

    [Fact]
    public void Overall_OneSymptom_IsThatSymptom()
    {
        TestabilityReport report = Assess(Parts.Repair("rab", 10, "a", "b"), Parts.Repair("rc", 10, "c"));
        Assert.Equal(report.Symptoms[0].Walks!.Minutes, report.Overall.Walks!.Minutes);
        Assert.Equal(report.Symptoms[0].MeanGroup, report.Overall.MeanGroup, 1e-12);
        Assert.Equal(5.0 / 3, report.Overall.MeanGroup, 1e-12);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Assess_RulesOverThePlan_CostWhatTheirWalksTakeMore(bool isWorse)
    {
        IPolicy laid = isWorse ? new Delaying() : new LivePlanner();
        Assessment assessment =
            new(Graph([Parts.Repair("rab", 30, "a", "b"), Parts.Repair("rc", 10, "c")]), Technician, new LivePlanner())
        {
            Walked = _ => new WalkedBy(Technician, new LivePlanner(), laid),
        };
        LaidFigures figures = assessment.Assess(walks: 50, seed: 1).Overall.Laid!;
        Assert.Equal(figures.Priced.Value - figures.Plain.Value, figures.Cost.Value, 1e-9);
        Assert.Equal(isWorse, figures.Cost.Value > 1);
        Assert.Equal(isWorse ? ["dear repair first", "quick repair first"] : [],
            figures.Rules.Select(rule => rule.Rule));
        if (isWorse) Assert.Equal(figures.Rules[0].Times, figures.Rules[1].HeldBack);
    }

    // Does the dearest repair that can still help.
    private sealed class Delaying : IRuledPolicy
    {
        public RuledStep Choose(SequencingProblem problem, Position position) => new(
            problem.Repairs.Where(repair => repair.Fixes.Any(fault => position.ProbabilityOf(fault) > 0))
                .MaxBy(repair => repair.Minutes) is { } dear
                ? new PlannedStep.DoRepair(dear.Id, problem.Access.Start)
                : new PlannedStep.Nothing(), [new RuleLoss("dear repair first", 1)])
        {
            HeldBack = ["quick repair first"],
        };

        public PlannedStep Next(SequencingProblem problem, Position position) => Choose(problem, position).Step;
    }

    [Fact]
    public void WithWrongParts_Factor_MultipliesThePrice()
    {
        FaultGraph graph = Graph(
            Parts.Repair("ra", 10, "a") with { WrongMinutes = 1 }, Parts.Repair("rb", 10, "b"),
            Parts.Repair("rc", 10, "c"));
        Assert.Equal(5, graph.WithWrongParts(5).Find(new RepairId("ra"))!.WrongMinutes);
    }

    private static WalkFigures Exact(params Repair[] repairs) =>
        new Assessment(Graph(repairs), Technician, new LivePlanner())
        {
            MostPositions = 100,
        }.Assess(0, 42).Symptoms[0].Walks!;

    [Fact]
    public void Assess_NegativeSessions_Throws() => Assert.Throws<ArgumentOutOfRangeException>(() =>
        new Assessment(Graph(), Technician, new LivePlanner()).Assess(-1, 1));

    private static Situation Technician => new(new Role("technician", 2), Parts.Any);

    private static TestabilityReport Assess(params Repair[] repairs) =>
        new Assessment(Graph(repairs), Technician, new LivePlanner()).Assess(walks: 200, seed: 42);

    private static FaultGraph Graph(params Repair[] repairs) => FaultGraph.Build(
        [Parts.Fault("a"), Parts.Fault("b"), Parts.Fault("c")],
        [Parts.Symptom(Symptom.Value, ("a", 1), ("b", 1), ("c", 1))],
        [Parts.Check("check", 1, 0, ("c", 1))],
        repairs, AccessStates.OnlyOne);
}
