using DxAssistant.Graph.Model;

namespace DxAssistant.Graph.Tests.BeliefTests;

/// <summary>When outcomes contradict each other, and whom they blame first.</summary>
public sealed class ContradictionTests
{
    private static readonly OutcomeId Pass = new("pass");
    private static readonly OutcomeId Fail = new("fail");

    [Fact]
    public void Believe_OneCheckAgainstTheRest_NamesItAsTheConflict()
    {
        Check[] agreeing = [.. Enumerable.Range(1, 3).Select(n => Parts.Check($"c{n}", 1, 0.001, ("a", 0.99)))];
        Check odd = Parts.Check("odd", 1, 0.5, ("a", 0), ("b", 0.5));
        FaultGraph graph = Graph([.. agreeing, odd]);
        Belief belief =
            graph.Believe([.. agreeing.Select(check => Evidence.Seen(check, Fail)), Evidence.Seen(odd, Fail)]);
        Assert.True(belief.Contradicted);
        Assert.Equal([new CheckId("odd")], belief.Conflicts.ToArray());
    }

    // Three odd results are no contradiction among twenty, as they are among three: each is seen once in twenty under
    // the fault.
    [Theory]
    [InlineData(3, true)]
    [InlineData(20, false)]
    public void Believe_ThreeOddResults_ContradictAmongFewOnly(int number, bool contradicted)
    {
        Check[] checks = [.. Enumerable.Range(1, number).Select(n => Parts.Check($"c{n:00}", 1, 0.05, ("a", 0.05)))];
        FaultGraph graph = Graph(checks);
        Belief belief = graph.Believe(checks.Select((check, place) => Evidence.Seen(check, place < 3 ? Fail : Pass)));
        Assert.True(belief.Fit < ContradictionFloor.Usual.Fit);
        Assert.Equal(contradicted, belief.Contradicted);
        Assert.Equal(contradicted, !belief.Conflicts.IsEmpty);
    }

    [Fact]
    public void Believe_OutcomesThatFit_AreNoConflict()
    {
        Check check = Parts.Check("c", 1, 0.1, ("a", 0.8));
        Belief belief = Graph([check]).Believe([Evidence.Seen(check, Fail)]);
        Assert.Equal(1, belief.Fit);
        Assert.False(belief.Contradicted);
        Assert.Empty(belief.Conflicts);
    }

    // Each of the two checks alone is as much to blame as the other; with one more on one side they are no longer.
    [Fact]
    public void Believe_TwoResultsAgainstThree_BlamesTheTwoMostOutOfPlaceFirst()
    {
        Check[] forA = [.. Enumerable.Range(1, 3).Select(n => Parts.Check($"a{n}", 1, 0.001, ("a", 0.99)))];
        Check[] forB = [.. Enumerable.Range(1, 2).Select(n => Parts.Check($"b{n}", 1, 0.01 * n, ("b", 0.99)))];
        FaultGraph graph = Graph([.. forA, .. forB]);
        Belief belief = graph.Believe([.. forA.Concat(forB).Select(check => Evidence.Seen(check, Fail))]);
        Assert.True(belief.Contradicted);
        // Fault a explains its three checks; b1 is seen in 1 of 100 under it, b2 in 2 of 100. The one most out of place
        // first.
        Assert.Equal(["b1", "b2"], belief.Conflicts.Select(check => check.Value));
        Assert.Equal(1 / 99.0 * (2 / 98.0), belief.Fit, 1e-9);
    }

    [Fact]
    public void Believe_TwoChecksToBlameAlone_NamesTheMoreHelpfulFirst()
    {
        // Without "other" all fits; without "one" the other is what b shows twice in five.
        Check one = Parts.Check("one", 1, 0.0005, ("a", 1)), other = Parts.Check("other", 1, 0.0001, ("b", 0.4));
        FaultGraph graph = Graph([one, other]);
        Belief belief = graph.Believe([Evidence.Seen(one, Fail), Evidence.Seen(other, Fail)]);
        Assert.True(belief.Contradicted);
        Assert.Equal(["other", "one"], belief.Conflicts.Select(check => check.Value));
    }

    // The best fault shows "fail" in 0.2 and "pass" in 0.8: a fit of 0.25, and outcomes as far off come in one of five
    // units.
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

    // Without "other" fault a explains the rest in full, without "one" fault b does so in 0.4 / 0.6. What either leaves
    // of the fault that it speaks against does not count.
    [Fact]
    public void Believe_TwoChecksToBlameAlone_GoByTheFaultThatIsExplainedThen()
    {
        Check one = Parts.Check("one", 1, 0.0001, ("a", 1)), other = Parts.Check("other", 1, 0.0005, ("b", 0.4));
        Belief belief = Graph(one, other).Believe([Evidence.Seen(one, Fail), Evidence.Seen(other, Fail)]);
        Assert.True(belief.Contradicted);
        Assert.Equal(["other", "one"], belief.Conflicts.Select(check => check.Value));
    }

    // Four results speak for a, three against it, and without any one of them two are left: no single one is to blame.
    // Then those count that a seldom shows, the rarest first; what it shows once in five is not seldom.
    [Fact]
    public void Believe_WithoutAnyOneNothingFits_BlamesWhatTheLikeliestFaultSeldomShows()
    {
        Check[] forA = [.. Enumerable.Range(1, 4).Select(n => Parts.Check($"a{n}", 1, 0.0005, ("a", 0.99)))];
        Check[] against = [Parts.Check("b1", 1, 0.9, ("a", 0.002)), Parts.Check("b2", 1, 0.9, ("a", 0.001)),
            Parts.Check("b3", 1, 0.9, ("a", 0.003))];
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
