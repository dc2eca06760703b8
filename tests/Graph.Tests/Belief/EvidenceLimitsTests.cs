using System.Collections.Immutable;
using DxAssistant.Graph.Model;

namespace DxAssistant.Graph.Tests.BeliefTests;

/// <summary>The ends of what evidence may say, and what is just outside them.</summary>
public sealed class EvidenceLimitsTests
{
    private static readonly FaultId A = new("a");
    private static readonly RepairId R = new("r");
    private static readonly Check C = Parts.Check("c", 1, 0.2, ("a", 0.9));

    public static TheoryData<Evidence> Outside =>
    [
        new Evidence.OutcomeSeen(C.Id, default),
        new Evidence.OutcomeSeen(C.Id, [1, 0, 0]),
        new Evidence.OutcomeSeen(C.Id, [double.PositiveInfinity, 1]),
        new Evidence.SymptomReported(new SymptomId("s"), double.NaN),
        new Evidence.RepairFailed(R, double.NaN),
        new Evidence.FaultMended(R, -0.1),
        new Evidence.FaultMended(new RepairId("unknown")),
        new Evidence.RepairedEarlier(new RepairId("unknown"), ImmutableSortedDictionary<FaultId, double>.Empty),
    ];

    [Theory]
    [MemberData(nameof(Outside))]
    public void Believe_OutsideItsRange_Throws(Evidence evidence) =>
        Assert.Throws<ArgumentException>(() => Graph().Believe([evidence]));

    // Work that surely does not hold tells nothing: the odds stay even. Work that surely holds rules the fault out.
    [Theory]
    [InlineData(0, 0)]
    [InlineData(1, 0.5)]
    public void Believe_WorkAtTheEndsOfItsRange_RulesOutOrTellsNothing(double notHeld, double left)
    {
        Assert.Equal(left, Graph().Believe([new Evidence.RepairFailed(R, notHeld)]).ProbabilityOf(A), 1e-12);
        Assert.Equal(left, Graph().Believe([new Evidence.FaultMended(R, notHeld)]).ProbabilityOf(A), 1e-12);
    }

    // Somebody may slip in reading an instrument; that a repair did not cure the unit is seen.
    [Fact]
    public void Believe_OutcomesThatExcludeEveryFault_BringBackNoFaultThatARepairRuledOut()
    {
        Check never = Parts.Check("never", 1, 0);
        Belief belief = Graph(never).Believe([Evidence.Seen(never, never.Outcomes[1]), new Evidence.RepairFailed(R)]);
        Assert.Equal(0, belief.ProbabilityOf(A));
        Assert.Equal(1, belief.ProbabilityOf(new FaultId("b")));
        Assert.False(belief.Exhausted);
    }

    [Fact]
    public void Believe_NoFaultApplies_IsExhaustedAndContradictsNothing()
    {
        Belief belief = Graph().Believe([Evidence.Seen(C, C.Outcomes[1])], new HashSet<FaultId>());
        Assert.Empty(belief.Ranked);
        Assert.True(belief.Exhausted);
        Assert.Equal(1, belief.Fit);
        Assert.False(belief.Contradicted);
    }

    // 0.1 + 0.2 is more than 0.3 in its last bit only, which is no reason to put b first.
    [Fact]
    public void Believe_FaultsApartInTheLastBitOnly_StandById()
    {
        FaultGraph graph =
            FaultGraph.Build([Parts.Fault("a", 0.3), Parts.Fault("b", 0.1 + 0.2)], [], [], [], AccessStates.OnlyOne);
        Assert.Equal(["a", "b"], graph.Believe([]).Ranked.Select(ranked => ranked.Id.Value));
    }

    // Odds are no likelihood and may be above 1; how much something was expected may not.
    [Fact]
    public void Ledger_OddsAboveOne_AreExpectedFullyAtMost()
    {
        LedgerLine line = Assert.Single(Graph().Believe([Earlier(7)]).Ledger);
        Assert.Equal(1, line.Expected);
        Assert.Equal(7, Math.Exp(line.LogLikelihood[A]), 1e-12);
        Assert.Equal(0.75, Assert.Single(Graph().Believe([Earlier(0.5)]).Ledger).Expected, 1e-12);
    }

    [Fact]
    public void Ledger_SecondPiece_IsExpectedByWhatWasBelievedAfterTheFirst()
    {
        Check other = Parts.Check("d", 1, 0.1, ("a", 0.6));
        Belief belief = Graph(other)
            .Believe([Evidence.Seen(C, C.Outcomes[1]), Evidence.Seen(other, other.Outcomes[1])]);
        // Bayes by hand: after the first a has 0.9 / 1.1; the second shows in 0.6 of a and 0.1 of b.
        Assert.Equal(0.9 / 1.1, belief.Ledger[1].Before[A], 1e-12);
        Assert.Equal((0.9 * 0.6 + 0.2 * 0.1) / 1.1, belief.Ledger[1].Expected, 1e-12);
    }

    [Fact]
    public void WeightFor_NoOtherFaultLeft_IsNothing()
    {
        Belief belief = Graph().Believe([Evidence.Seen(C, C.Outcomes[1])], new HashSet<FaultId> { A });
        Assert.Equal(0, Assert.Single(belief.Ledger).WeightFor(A));
    }

    [Fact]
    public void WeightFor_WhatNoFaultCanShow_IsNothing()
    {
        Evidence.RepairWorked cured = new(new RepairId("useless"));
        LedgerLine line = Assert.Single(Graph().Believe([cured]).Ledger);
        Assert.Equal(0, line.WeightFor(A));
        Assert.True(Graph().Believe([cured]).Exhausted);
    }

    [Fact]
    public void WeightFor_FaultThatIsNoCandidate_Throws() =>
        Assert.Throws<KeyNotFoundException>(() => Graph()
            .Believe([Earlier(2)]).Ledger[0].WeightFor(new FaultId("unknown")));

    [Fact]
    public void Believe_SymptomToldAgain_CountsTheLastTelling()
    {
        Belief twice = Graph()
            .Believe([new Evidence.SymptomReported(new("s"), 0.2), new Evidence.SymptomReported(new("s"))]);
        Assert.Single(twice.Ledger);
        Assert.Equal(Graph().Believe([new Evidence.SymptomReported(new("s"))]).Ranked.ToArray(),
            twice.Ranked.ToArray());
    }

    [Fact]
    public void Believe_RepairFailedThenWorked_CountsTheLastWord()
    {
        Belief belief = Graph().Believe([new Evidence.RepairFailed(R), new Evidence.RepairWorked(R)]);
        Assert.Single(belief.Ledger);
        Assert.Equal(1, belief.ProbabilityOf(A));
    }

    // A product of such numbers depends on its order in the last bit; the ranking does not depend on the order of
    // telling.
    [Fact]
    public void Believe_WorkAndDoubtfulReportsInAnotherOrder_RankTheSameToTheLastBit()
    {
        Repair[] repairs = [.. Enumerable.Range(1, 8)
            .Select(number => Parts.Repair($"r{number}", 1, "a", number % 2 == 0 ? "b" : "c"))];
        Symptom[] symptoms = [.. Enumerable.Range(1, 4)
            .Select(number => Parts.Symptom($"s{number}", ("a", 0.7 / number), ("b", 0.1 * number), ("c", 0.33)))];
        FaultGraph graph = FaultGraph.Build([Parts.Fault("a", 0.7), Parts.Fault("b", 0.3), Parts.Fault("c")], symptoms,
            [], repairs, AccessStates.OnlyOne);
        Evidence[] told =
        [
            .. repairs.Take(3).Select((repair, place) => new Evidence.RepairFailed(repair.Id, 0.1 + 0.07 * place)),
            .. repairs.Skip(3).Take(3)
                .Select((repair, place) => new Evidence.FaultMended(repair.Id, 0.3 + 0.11 * place)),
            .. repairs.Skip(4).Select((repair, place) => new Evidence.RepairedEarlier(
                repair.Id, ImmutableSortedDictionary<FaultId, double>.Empty.Add(A, 0.7 + 0.13 * place))),
            .. symptoms.Select((symptom, place) => new Evidence.SymptomReported(symptom.Id, 0.9 - 0.17 * place)),
        ];
        Belief inOrder = graph.Believe(told);
        for (int seed = 1; seed <= 50; seed++)
        {
            Evidence[] shuffled = [.. told];
            new Random(seed).Shuffle(shuffled);
            Assert.Equal(inOrder.Ranked.ToArray(), graph.Believe(shuffled).Ranked.ToArray());
        }
    }

    private static Evidence.RepairedEarlier Earlier(double odds) =>
        new(R, ImmutableSortedDictionary<FaultId, double>.Empty.Add(A, odds));

    private static FaultGraph Graph(params Check[] more) => FaultGraph.Build(
        [Parts.Fault("a"), Parts.Fault("b")], [Parts.Symptom("s", ("a", 0.5), ("b", 0.1))], [C, .. more],
        [Parts.Repair("r", 1, "a"), Parts.Repair("useless", 1)], AccessStates.OnlyOne);
}
