using System.Collections.Immutable;
using DxAssistant.Graph.Model;

namespace DxAssistant.Graph.Tests;

/// <summary>What is found in parts that come close to being usable.</summary>
public sealed class FaultGraphFindingTests
{
    private static readonly FaultId A = new("a");

    private static Check ThreeOutcomes => new(
        new CheckId("c"), 1, [Parts.Any], Role.Anyone,
        [new OutcomeId("low"), new OutcomeId("fit"), new OutcomeId("high")],
        ImmutableSortedDictionary<FaultId, ImmutableArray<double>>.Empty.Add(A, [0.8, 0.1, 0.1]), [0.1, 0.8, 0.1]);

    [Fact]
    public void Build_ThreeOutcomes_AreUsable()
    {
        FaultGraph graph = Built(ThreeOutcomes);
        Assert.Equal(3, Assert.Single(graph.Checks).Outcomes.Length);
        // It sees a; nothing sees b.
        Assert.Equal(new Finding.SeenByNoCheck(new FaultId("b")), Assert.Single(graph.Findings));
    }

    [Fact]
    public void Build_OneOutcome_IsTooFew()
    {
        Check one = ThreeOutcomes with { Outcomes = [new OutcomeId("low")] };
        Assert.Contains(new Finding.UnusableOutcomes(one.Id), Built(one).Findings);
    }

    // The row sums to 1 and one of its numbers is a probability; the others are none.
    [Fact]
    public void Build_RowWithSomeNumbersOutOfRange_IsUnusable()
    {
        Check check = ThreeOutcomes with { Likelihoods = ThreeOutcomes.Likelihoods.SetItem(A, [1.2, -0.2, 0]) };
        Assert.Contains(new Finding.UnusableRow(check.Id, A), Built(check).Findings);
    }

    // Every fault has a row of its own and all say the same: what no fault shows tells none apart.
    [Fact]
    public void ChecksOf_AllRowsAlikeAndNoFaultWithout_IsNone()
    {
        FaultGraph graph = Built(Parts.Check("c", 1, 0.9, ("a", 0.5), ("b", 0.5)));
        Assert.Empty(graph.ChecksOf(A));
        Assert.Empty(graph.FaultsSeenBy(new CheckId("c")));
        Assert.Contains(new Finding.SeparatesNothing(new CheckId("c")), graph.Findings);
    }

    [Fact]
    public void Findings_PartsInAnyOrder_ComeById()
    {
        Fault[] faults = [Parts.Fault("z", 0), Parts.Fault("a"), Parts.Fault("m", -1), Parts.Fault("b")];
        FaultGraph graph = FaultGraph.Build(faults, [Parts.Symptom("s", ("a", 1), ("b", 1))], [ThreeOutcomes], Repairs,
            AccessStates.OnlyOne);
        Assert.Equal(
            [new FaultId("m"), new FaultId("z")],
            graph.Findings.OfType<Finding.NumberOutOfRange>().Select(finding => ((Node.OfFault)finding.Node).Id));
    }

    // A cover that is off already: the way takes no time, and is a way.
    [Fact]
    public void AccessStates_WayOfNoMinutes_IsAWay()
    {
        AccessId open = new("open");
        AccessStates access =
            new([new(Parts.Any, Role.Anyone), new(open, Role.Anyone)], [new(Parts.Any, open, 0)], Parts.Any);
        Assert.Equal(0, access.Minutes(Parts.Any, open));
        Assert.Equal([Parts.Any, open], access.Way(Parts.Any, open).ToArray());
    }

    [Fact]
    public void Check_ShorterThanTheWayToWhereItLeavesTheUnit_IsFound()
    {
        AccessId on = new("on");
        AccessStates access = new([new(Parts.Any, Role.Anyone), new(on, Role.Anyone)],
            [new(Parts.Any, on, 4), new(on, Parts.Any, 9)], Parts.Any);
        Check check = Parts.Check("c", 3, 0, ("a", 1)) with { Leaves = on };
        Assert.Contains(new Finding.NumberOutOfRange(new Node.OfCheck(check.Id), 3), FindingsOf(check));
        Assert.DoesNotContain(new Finding.NumberOutOfRange(new Node.OfCheck(check.Id), 4),
            FindingsOf(check with { Minutes = 4 }));

        ImmutableArray<Finding> FindingsOf(Check made) => FaultGraph.Build(
            [Parts.Fault("a"), Parts.Fault("b")], [Parts.Symptom("s", ("a", 1), ("b", 1))], [made], Repairs,
            access).Findings;
    }

    [Fact]
    public void Check_ThatLeavesTheUnitInAnUnknownState_IsFound()
    {
        Check check = Parts.Check("c", 3, 0, ("a", 1)) with { Leaves = new AccessId("nowhere") };
        FaultGraph built = Built(check);
        Assert.Contains(new Finding.UnknownReference(new Node.OfCheck(check.Id),
            new Node.OfAccess(new AccessId("nowhere"))), built.Findings);
        Assert.Null(built.Find(check.Id)!.Leaves);
    }

    private static Repair[] Repairs => [Parts.Repair("ra", 1, "a"), Parts.Repair("rb", 1, "b")];

    private static FaultGraph Built(Check check) => FaultGraph.Build(
        [Parts.Fault("a"), Parts.Fault("b")], [Parts.Symptom("s", ("a", 1), ("b", 1))], [check], Repairs,
        AccessStates.OnlyOne);
}
