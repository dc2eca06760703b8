using DxAssistant.Graph.Model;

namespace DxAssistant.Graph.Tests.BeliefTests;

/// <summary>When outcomes contradict each other, and whom they blame first.</summary>
public sealed class ContradictionTests
{
    private static readonly OutcomeId Fail = new("fail");

    // The best fault shows "fail" in 0.2 and "pass" in 0.8: a fit of 0.25, and outcomes as far off come in one of five units.
    [Theory]
    [InlineData(0.1, 1.0, false)]
    [InlineData(0.5, 0.05, false)]
    [InlineData(0.5, 1.0, true)]
    public void Believe_FloorAskedFor_DecidesWhatContradicts(double fit, double chance, bool contradicted)
    {
        Check check = Parts.Check("c", 1, 0.01, ("a", 0.2));
        Belief belief = Graph(check).Believe([Evidence.Seen(check, Fail)], floor: new ContradictionFloor(fit, chance));
        Assert.Equal(0.25, belief.Fit, 1e-12);
        Assert.Equal(contradicted, belief.Contradicted);
    }

    // Without "other" fault a explains the rest in full, without "one" fault b does so in 0.4 / 0.6. What either leaves of the
    // fault that it speaks against does not count.
    [Fact]
    public void Believe_TwoChecksToBlameAlone_GoByTheFaultThatIsExplainedThen()
    {
        Check one = Parts.Check("one", 1, 0.0001, ("a", 1)), other = Parts.Check("other", 1, 0.0005, ("b", 0.4));
        Belief belief = Graph(one, other).Believe([Evidence.Seen(one, Fail), Evidence.Seen(other, Fail)]);
        Assert.True(belief.Contradicted);
        Assert.Equal(["other", "one"], belief.Conflicts.Select(check => check.Value));
    }

    private static FaultGraph Graph(params Check[] checks) =>
        FaultGraph.Build([Parts.Fault("a"), Parts.Fault("b")], [], checks, [], AccessStates.OnlyOne);
}
