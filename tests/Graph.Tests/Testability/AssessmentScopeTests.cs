using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Graph.Testability;

namespace DxAssistant.Graph.Tests.Testability;

/// <summary>
/// What an assessment takes in and leaves out, and how the figures of symptoms make those of the whole.
/// </summary>
public sealed class AssessmentScopeTests
{
    private static readonly Role Technician = new("technician", 2);
    private static readonly Check Tells = Parts.Check("tells", 1, 0, ("a", 1));

    [Fact]
    public void Assess_CheckForAHigherRole_TellsNothingApart()
    {
        TestabilityReport report = Assess(Graph(Tells with { Who = new Role("engineer", 3) }), Usual);
        Assert.Equal(["a", "b", "c"], Assert.Single(report.ToldApartByNoCheck).Faults.Select(fault => fault.Value));
        Assert.Equal(0, report.Symptoms[0].Detected);
    }

    [Fact]
    public void Assess_CheckForTheSameRole_TellsApart() =>
        Assert.Equal(1, Assess(Graph(Tells with { Who = Technician }), Usual).Symptoms[0].MeanGroup, 1e-12);

    [Fact]
    public void Assess_CheckThatCannotBeDoneHere_TellsNothingApart() =>
        Assert.Equal(2, Assess(Graph(Tells), Usual with { BarredChecks = [Tells.Id] }).Symptoms[0].MeanGroup, 1e-12);

    // a weighs 3 and shows s half of the time, b weighs 1 and always does: 1.5 + 1. Without b the rest is 1.5.
    [Fact]
    public void Assess_Weight_IsHowOftenTheSymptomIsMet()
    {
        Assert.Equal(2.5, Assess(Graph(Tells), Usual).Symptoms[0].Weight, 1e-12);
        SymptomFigures without = new Assessment(Graph(Tells), Usual, new LivePlanner())
            .Assess(0, 1, new HashSet<FaultId> { new("a"), new("c") }).Symptoms[0];
        Assert.Equal((1.5, 1), (without.Weight, without.Faults));
    }

    [Fact]
    public void Assess_SymptomOfFaultsTheUnitCannotHave_IsLeftOut()
    {
        TestabilityReport report =
            new Assessment(Graph(Tells), Usual, new LivePlanner()).Assess(0, 1, new HashSet<FaultId> { new("c") });
        Assert.Equal(["t"], report.Symptoms.Select(figures => figures.Symptom.Value));
    }

    [Fact]
    public void Assess_SymptomOfNoneOfTheseAlone_IsLeftOut()
    {
        FaultGraph graph = FaultGraph.Build(
            [Parts.Fault("a"), Parts.Fault(FaultId.NoneOfThese.Value)],
            [Parts.Symptom("s", ("a", 1)), Parts.Symptom("vague", (FaultId.NoneOfThese.Value, 1))], [],
            [Parts.Repair("ra", 1, "a")], AccessStates.OnlyOne);
        Assert.Equal(["s"], Assess(graph, Usual).Symptoms.Select(figures => figures.Symptom.Value));
    }

    [Fact]
    public void Assess_Progress_TellsEachSymptomAsItIsDone()
    {
        List<(string, int, int)> told = [];
        new Assessment(Graph(Tells), Usual, new LivePlanner())
        {
            Progress = (symptom, done, all) => told.Add((symptom.Value, done, all)),
        }.Assess(0, 1);
        Assert.Equal([("s", 1, 2), ("t", 2, 2)], told);
    }

    [Fact]
    public void Assess_NoWalks_SaysNothingOfWalks()
    {
        TestabilityReport report = Assess(Graph(Tells), Usual);
        Assert.Null(report.Symptoms[0].Walks);
        Assert.Null(report.Symptoms[0].Laid);
        Assert.Null(report.Overall.Walks);
        Assert.Null(report.Overall.LeastMinutes);
        Assert.Null(report.Overall.Laid);
    }

    // A certain check of 1 min and the repair it points to: 11 min for every unit, and no plan takes less.
    [Fact]
    public void Assess_PolicyThatPlans_SaysWhatNoPlanCanBeat()
    {
        SymptomFigures figures = Assess(Graph(Tells), Usual).Symptoms[0];
        Assert.Equal(11, figures.PricedMinutes!.Value, 1e-9);
        Assert.Equal(11, figures.LeastMinutes!.Value, 1e-9);
    }

    [Fact]
    public void Assess_PositionsPastTheLimit_PlaysWalks()
    {
        // A check with two outcomes that count: three positions.
        Assert.True(Walked(3).IsExact);
        Assert.Equal(3, Walked(3).Count);
        WalkFigures played = Walked(2);
        Assert.False(played.IsExact);
        Assert.Equal(20, played.Count);

        static WalkFigures Walked(int most) =>
            new Assessment(Graph(Tells), Usual, new LivePlanner())
            {
                MostPositions = most,
            }.Assess(20, 1).Symptoms[0].Walks!;
    }

    // s weighs 2.5 and needs the check (11 min), t weighs 1 and is c alone (10 min).
    [Fact]
    public void Overall_TwoSymptoms_WeighsThemByHowOftenTheyAreMet()
    {
        TestabilityReport report = new Assessment(Graph(Tells), Usual, new LivePlanner())
        {
            MostPositions = 10,
        }.Assess(0, 1);
        OverallFigures overall = report.Overall;
        Assert.Equal((2.5 * 11 + 1 * 10) / 3.5, overall.Walks!.Minutes.Value, 1e-9);
        Assert.Equal(2.5 / 3.5, overall.Walks.Checks.Value, 1e-9);
        Assert.Equal((2.5 * 11 + 1 * 10) / 3.5, overall.LeastMinutes!.Value, 1e-9);
        Assert.True(overall.Walks.IsExact);
        Assert.Equal(report.Symptoms.Sum(each => each.Walks!.Count), overall.Walks.Count);
        Assert.Equal([1, 1, 1], overall.IsolatableTo.Select(share => Math.Round(share, 9)));
        // The check has a row of its own for a alone: 1.5 of all 3.5.
        Assert.Equal(1.5 / 3.5, overall.Detected, 1e-12);
    }

    // One more symptom, later by its id, leaves the figures of those before it as they were.
    [Fact]
    public void Assess_OneMoreSymptom_LeavesTheFiguresBeforeIt()
    {
        Check noisy = Parts.Check("noisy", 1, 0.3, ("a", 0.8));
        WalkFigures two = Played(Graph(noisy)), three =
            Played(Graph(noisy).With(new GraphEdit { Symptoms = [Parts.Symptom("u", ("a", 1))] }));
        Assert.Equal(two.Minutes, three.Minutes);

        static WalkFigures Played(FaultGraph graph) =>
            new Assessment(graph, Usual, new LivePlanner()).Assess(50, 9).Symptoms[0].Walks!;
    }

    // rab cures most; of what is left, c, both rbc and rc cure one: the first by id. No repair cures d, so no repairs
    // cure its group.
    [Theory]
    [InlineData(false, "rab rbc")]
    [InlineData(true, "")]
    public void Groups_RepairsOfOne_AreTheFewestThatCureAll(bool withD, string repairs)
    {
        Fault[] faults = [Parts.Fault("a"), Parts.Fault("b"), Parts.Fault("c"),
            .. withD ? [Parts.Fault("d")] : Array.Empty<Fault>()];
        FaultGraph graph = FaultGraph.Build(
            faults, [Parts.Symptom("s", [.. faults.Select(fault => (fault.Id.Value, 1.0))])], [],
            [Parts.Repair("rab", 1, "a", "b"), Parts.Repair("rbc", 1, "b", "c"), Parts.Repair("rc", 1, "c")],
            AccessStates.OnlyOne);
        SymptomFigures figures = Assess(graph, Usual).Symptoms[0];
        Assert.Equal(repairs, string.Join(' ', Assert.Single(figures.Groups).Repairs));
        Assert.Equal((0, withD ? 0 : 1), (figures.IsolatableTo(1), Math.Round(figures.IsolatableTo(3), 12)));
    }

    private static Situation Usual => new(Technician, Parts.Any);

    private static TestabilityReport Assess(FaultGraph graph, Situation situation) =>
        new Assessment(graph, situation, new LivePlanner()).Assess(0, 1);

    private static FaultGraph Graph(Check check) => FaultGraph.Build(
        [Parts.Fault("a", 3), Parts.Fault("b"), Parts.Fault("c")],
        [Parts.Symptom("s", ("a", 0.5), ("b", 1)), Parts.Symptom("t", ("c", 1))], [check],
        [Parts.Repair("ra", 10, "a"), Parts.Repair("rb", 10, "b"), Parts.Repair("rc", 10, "c")], AccessStates.OnlyOne);
}
