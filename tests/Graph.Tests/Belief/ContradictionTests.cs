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

    // Four results speak for a, three against it, and without any one of them two are left: no single one is to blame. Then those
    // count that a seldom shows, the rarest first; what it shows once in five is not seldom.
    [Fact]
    public void Believe_WithoutAnyOneNothingFits_BlamesWhatTheLikeliestFaultSeldomShows()
    {
        Check[] forA = [.. Enumerable.Range(1, 4).Select(n => Parts.Check($"a{n}", 1, 0.0005, ("a", 0.99)))];
        Check[] against = [Parts.Check("b1", 1, 0.9, ("a", 0.002)), Parts.Check("b2", 1, 0.9, ("a", 0.001)), Parts.Check("b3", 1, 0.9, ("a", 0.003))];
        Check mild = Parts.Check("mild", 1, 0.9, ("a", 0.2));
        Check[] all = [.. forA, .. against, mild];
        Belief belief = Graph(all).Believe(all.Select(check => Evidence.Seen(check, Fail)));
        Assert.Equal("a", belief.Ranked[0].Id.Value);
        Assert.True(belief.Contradicted);
        Assert.Equal(["b2", "b1", "b3"], belief.Conflicts.Select(check => check.Value));
    }

    private static FaultGraph Graph(params Check[] checks) =>
        FaultGraph.Build([Parts.Fault("a"), Parts.Fault("b")], [], checks, [], AccessStates.OnlyOne);
}
