using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;

namespace DxAssistant.Graph.Tests.BeliefTests;

/// <summary>What a case costs depends on the faults in question, not on how many the library holds.</summary>
public sealed class CandidateTests
{
    private const int Strangers = 50;

    [Fact]
    public void BelieveWhere_SymptomTold_AsksOfItsFaultsAlone()
    {
        List<FaultId> asked = [];
        Belief belief = Library().BelieveWhere(
            fault =>
            {
                asked.Add(fault);
                return fault.Value != "b";
            },
            [new Evidence.SymptomReported(new SymptomId("s"))]);

        Assert.Equal(["a", "b", "none-of-these"], asked.Select(fault => fault.Value));
        Assert.Equal(["a", "none-of-these"], belief.Ranked.Select(ranked => ranked.Id.Value)
            .Order(StringComparer.Ordinal));
    }

    [Fact]
    public void BelieveWhere_SymptomOnlyPerhapsMeant_AsksOfEveryFault()
    {
        int asked = 0;
        Library().BelieveWhere(_ => ++asked > 0, [new Evidence.SymptomReported(new SymptomId("s"), 0.7)]);
        Assert.Equal(Strangers + 3, asked);
    }

    // A check in which none of them has a row of its own shows the same under all; a repair of other faults cures none.
    [Fact]
    public void From_SymptomTold_PlansWhatBelongsToItsFaults()
    {
        FaultGraph graph = Library();
        SequencingProblem problem = CaseProblem.From(
            graph, graph.Believe([new Evidence.SymptomReported(new SymptomId("s"))]),
            new Situation(Role.Anyone, Parts.Any)).Problem!;
        Assert.Equal(["split"], problem.Checks.Select(check => check.Id.Value));
        Assert.Equal(["mend-a", "mend-b"], problem.Repairs.Select(repair => repair.Id.Value)
            .Where(id => id != RepairId.HandOver.Value));
    }

    private static FaultGraph Library()
    {
        string[] strangers =
            [.. Enumerable.Range(0, Strangers).Select(number => FormattableString.Invariant($"x{number}"))];
        return FaultGraph.Build(
            [Parts.Fault("a"), Parts.Fault("b"), Parts.Fault("none-of-these", 0.1),
                .. strangers.Select(id => Parts.Fault(id))],
            [Parts.Symptom("s", ("a", 0.9), ("b", 0.5), ("none-of-these", 0.1)),
                .. strangers.Select(id => Parts.Symptom($"s-{id}", (id, 0.9)))],
            [Parts.Check("split", 1, 0.1, ("a", 0.9)),
                .. strangers.Select(id => Parts.Check($"c-{id}", 1, 0.1, (id, 0.9)))],
            [Parts.Repair("mend-a", 5, "a"), Parts.Repair("mend-b", 5, "b"),
                .. strangers.Select(id => Parts.Repair($"mend-{id}", 5, id))],
            AccessStates.OnlyOne);
    }
}
