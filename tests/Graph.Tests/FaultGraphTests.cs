using System.Collections.Immutable;
using DxAssistant.Graph.Model;

namespace DxAssistant.Graph.Tests;

public sealed class FaultGraphTests
{
    private static readonly FaultId A = new("a");
    private static readonly CheckId C = new("c");

    [Fact]
    public void Build_SoundParts_FindsNothing() => Assert.Empty(Sound().Findings);

    [Fact]
    public void Build_PartsInAnyOrder_GivesTheSameNodesAndLinks()
    {
        FaultGraph shuffled = FaultGraph.Build(
            Sound().Faults.Reverse(), Sound().Symptoms.Reverse(),
            Sound().Checks.Reverse(), Sound().Repairs.Reverse(), AccessStates.OnlyOne);
        Assert.Equal(Sound().Nodes, shuffled.Nodes);
        Assert.Equal(Sound().Links.Select(link => link.ToString()), shuffled.Links.Select(link => link.ToString()));
    }

    [Fact]
    public void Queries_SoundGraph_FollowTheLinks()
    {
        FaultGraph graph = Sound();
        Assert.Equal(["s"], graph.SymptomsOf(A).Select(symptom => symptom.Id.Value));
        Assert.Equal(["a", "b"], graph.CausesOf(new SymptomId("s")).Select(fault => fault.Id.Value));
        Assert.Equal(["ra"], graph.RepairsOf(A).Select(repair => repair.Id.Value));
        Assert.Equal(["c"], graph.ChecksOf(A).Select(check => check.Id.Value));
        Assert.Equal(["a", "b"], graph.FaultsSeenBy(C).Select(fault => fault.Id.Value));
        Assert.Equal(["c"], graph.ChecksSeparating([A, new FaultId("b")]).Select(check => check.Id.Value));
        Assert.Empty(graph.ChecksSeparating([A]));
        Assert.Equal(3, graph.DoneIn(Parts.Any).Count());
        Assert.Null(graph.Find(new FaultId("unknown")));
    }

    // A row of its own that says what every other says sets a fault apart only when all the others have rows that
    // differ.
    [Theory]
    [InlineData(true, "c")]
    [InlineData(false, "")]
    public void ChecksOf_RowLikeEveryOther_IsListedOnlyWhenAnotherFaultDiffers(bool differs, string listed)
    {
        FaultGraph graph = Built(checks: [Parts.Check("c", 1, 0.5, ("a", 0.5), ("b", differs ? 0.1 : 0.5))]);
        Assert.Equal(listed, string.Join(' ', graph.ChecksOf(A).Select(check => check.Id.Value)));
        Assert.Equal(graph.LinksTo(new Node.OfFault(A)).OfType<Link.Separates>()
            .Select(link => link.Check), graph.ChecksOf(A).Select(check => check.Id));
    }

    public static TheoryData<Finding> Unsound =>
    [
        new Finding.IdTwice(new Node.OfFault(A)),
        new Finding.NumberOutOfRange(new Node.OfFault(new FaultId("weightless")), 0),
        new Finding.UnknownReference(new Node.OfSymptom(new SymptomId("s")), new Node.OfFault(new FaultId("unknown"))),
        new Finding.NumberOutOfRange(new Node.OfSymptom(new SymptomId("s")), 1.5),
        new Finding.UnusableRow(C, null),
        new Finding.UnusableRow(C, A),
        new Finding.UnusableOutcomes(C),
        new Finding.UnknownReference(new Node.OfCheck(C), new Node.OfAccess(new AccessId("roof"))),
        new Finding.WithoutAccess(new Node.OfCheck(C)),
        new Finding.NumberOutOfRange(new Node.OfCheck(C), -1),
        new Finding.SeparatesNothing(C),
        new Finding.SeenByNoCheck(A),
        new Finding.WithoutRepair(A),
        new Finding.WithoutSymptom(A),
        new Finding.WithoutCause(new SymptomId("s")),
        new Finding.CuresNothing(new RepairId("ra")),
        new Finding.Unreachable(new AccessId("roof")),
    ];

    [Theory]
    [MemberData(nameof(Unsound))]
    public void Build_OneThingWrong_FindsIt(Finding expected) => Assert.Contains(expected, Broken(expected).Findings);

    [Fact]
    public void Build_NoneOfThese_NeedsNoSymptomCheckOrRepair()
    {
        FaultGraph graph = FaultGraph.Build(
            [.. Sound().Faults, Parts.Fault(FaultId.NoneOfThese.Value)],
            Sound().Symptoms, Sound().Checks, Sound().Repairs, AccessStates.OnlyOne);
        Assert.Empty(graph.Findings);
    }

    [Fact]
    public void Build_ValuesAtTheirLimits_AreUsable()
    {
        FaultGraph graph = Built(
            symptoms: [Parts.Symptom("s", ("a", 1), ("b", 1))],
            checks: [Sure with { Minutes = 0, EveryOtherFault = [1, 0] }],
            repairs: [Parts.Repair("ra", 0, "a"), Parts.Repair("rb", 0, "b")]);
        Assert.Empty(graph.Findings);
        Assert.Single(graph.Checks);
    }

    [Fact]
    public void Build_CauseThatNeverShows_IsLeftOut()
    {
        FaultGraph graph = Built(symptoms: [Parts.Symptom("s", ("a", 0), ("b", 1))]);
        Assert.Contains(new Finding.NumberOutOfRange(new Node.OfSymptom(new SymptomId("s")), 0), graph.Findings);
        Assert.Equal(["b"], graph.CausesOf(new SymptomId("s")).Select(fault => fault.Id.Value));
    }

    public static TheoryData<double[]> UnusableRows =>
        [[0.5, 0.6], [1.5, -0.5], [0.5], [0.2, 0.3, 0.5], [double.NaN, 1], [2, 3]];

    [Theory]
    [MemberData(nameof(UnusableRows))]
    public void Build_UnusableRow_LeavesOutTheRowAndKeepsTheCheck(double[] row)
    {
        FaultGraph graph = Built(checks: [Sure with { Likelihoods = Sure.Likelihoods.SetItem(A, [.. row]) }]);
        Assert.Contains(new Finding.UnusableRow(C, A), graph.Findings);
        Assert.Equal(["b"], Assert.Single(graph.Checks).Likelihoods.Keys.Select(fault => fault.Value));
    }

    [Fact]
    public void Build_CheckOrRepairUnusable_IsLeftOut()
    {
        Repair sound = Parts.Repair("ra", 1, "a");
        Assert.Empty(Built(checks: [Sure with { Minutes = double.PositiveInfinity }]).Checks);
        Assert.Empty(Built(checks: [Sure with { Access = [] }]).Checks);
        Assert.Empty(Built(checks: [Sure with { Outcomes = [new OutcomeId("pass")] }]).Checks);
        Assert.Empty(Built(repairs: [sound with { Minutes = -1 }]).Repairs);
        Assert.Empty(Built(repairs: [sound with { VerifyMinutes = -1 }]).Repairs);
        Assert.Empty(Built(repairs: [sound with { Access = [new AccessId("roof")] }]).Repairs);
    }

    [Fact]
    public void Build_UnknownAccessBesideAKnownOne_IsLeftOutOfTheCheck() =>
        Assert.Equal([Parts.Any],
            Assert.Single(
                Built(checks: [Sure with { Access = [new AccessId("roof"), Parts.Any] }]).Checks).Access.ToArray());

    [Fact]
    public void Build_RepairNamesFaultsInAnyOrder_HoldsThemById() =>
        Assert.Equal(["a", "b"],
            Assert.Single(Built(repairs: [Parts.Repair("r", 1, "b", "a", "b")]).Repairs).Fixes.Select(
                fault => fault.Value));

    [Fact]
    public void Links_AccessStates_LeadToEachOtherButNotToThemselves()
    {
        AccessId roof = new("roof");
        FaultGraph graph = Built(access: new AccessStates([new(Parts.Any, Role.Anyone), new(roof, Role.Anyone)],
            [new(Parts.Any, roof, 4)], Parts.Any));
        Assert.Equal([new Link.LeadsTo(Parts.Any, roof, 4)], graph.Links.OfType<Link.LeadsTo>());
    }

    [Fact]
    public void WithWrongParts_Factor_MultipliesThePrice()
    {
        FaultGraph graph =
            Built(repairs: [Parts.Repair("ra", 1, "a") with { WrongMinutes = 30 }, Parts.Repair("rb", 1, "b")]);
        Assert.Equal([15.0, 0.0], graph.WithWrongParts(0.5).Repairs.Select(repair => repair.WrongMinutes));
    }

    private static FaultGraph Sound() => Built();

    private static FaultGraph Built(
        Fault[]? faults = null, Symptom[]? symptoms = null, Check[]? checks = null,
        Repair[]? repairs = null, AccessStates? access = null) =>
        FaultGraph.Build(
            faults ?? [Parts.Fault("a"), Parts.Fault("b")],
            symptoms ?? [Parts.Symptom("s", ("a", 0.5), ("b", 0.5))],
            checks ?? [Sure],
            repairs ?? [Parts.Repair("ra", 1, "a"), Parts.Repair("rb", 1, "b")],
            access ?? AccessStates.OnlyOne);

    private static Check Sure => Parts.Check("c", 1, 0.5, ("a", 0.9), ("b", 0.1));

    private static FaultGraph Broken(Finding finding) => finding switch
    {
        Finding.IdTwice => Built(faults: [Parts.Fault("a"), Parts.Fault("a"), Parts.Fault("b")]),
        Finding.NumberOutOfRange { Node: Node.OfFault } =>
            Built(faults: [Parts.Fault("a"), Parts.Fault("b"), Parts.Fault("weightless", 0)]),
        Finding.NumberOutOfRange { Node: Node.OfSymptom } =>
            Built(symptoms: [Parts.Symptom("s", ("a", 1.5), ("b", 1))]),
        Finding.NumberOutOfRange => Built(checks: [Sure with { Minutes = -1 }]),
        Finding.UnknownReference { From: Node.OfSymptom } =>
            Built(symptoms: [Parts.Symptom("s", ("a", 1), ("b", 1), ("unknown", 1))]),
        Finding.UnknownReference => Built(checks: [Sure with { Access = [Parts.Any, new AccessId("roof")] }]),
        Finding.UnusableRow { Fault: null } => Built(checks: [Sure with { EveryOtherFault = [0.5] }]),
        Finding.UnusableRow => Built(checks: [Sure with { Likelihoods = Sure.Likelihoods.SetItem(A, [0.5, 0.6]) }]),
        Finding.UnusableOutcomes =>
            Built(checks: [Sure with { Outcomes = [new OutcomeId("pass"), new OutcomeId("pass")] }]),
        Finding.WithoutAccess => Built(checks: [Sure with { Access = [] }]),
        Finding.SeparatesNothing => Built(checks: [Parts.Check("c", 1, 0.5, ("a", 0.5), ("b", 0.5))]),
        Finding.SeenByNoCheck => Built(checks: []),
        Finding.WithoutRepair => Built(repairs: [Parts.Repair("rb", 1, "b")]),
        Finding.WithoutSymptom => Built(symptoms: [Parts.Symptom("s", ("b", 1))]),
        Finding.WithoutCause => Built(symptoms: [Parts.Symptom("s")]),
        Finding.CuresNothing => Built(repairs: [Parts.Repair("ra", 1), Parts.Repair("rb", 1, "b")]),
        _ => Built(access: new AccessStates(
            [new(Parts.Any, Role.Anyone), new(new AccessId("roof"), Role.Anyone)], [], Parts.Any)),
    };
}
