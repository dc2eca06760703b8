using System.Collections.Immutable;
using DxAssistant.Graph.Model;

namespace DxAssistant.Graph.Tests.BeliefTests;

public sealed class BeliefTests
{
    private static readonly OutcomeId Pass = new("pass");
    private static readonly OutcomeId Fail = new("fail");

    // Sources: 01 public exam item, result recomputed; 02 and 03 published exercise inputs, recomputed; 04 published
    // article, prints 19 %; 05 an even prior gives the accuracy of a symmetric test. Formula of Bayes for sensitivity
    // and specificity.
    [Theory]
    [InlineData(0.01, 0.9, 0.95, 0.153846154, 0.00106213489)]
    [InlineData(0.01, 0.9, 0.98, 0.3125, 0.00102965404)]
    [InlineData(0.03, 0.99, 0.85, 0.169520548, 0.000363724539)]
    [InlineData(0.01, 0.93, 0.96, 0.190184049, 0.000735989906)]
    [InlineData(0.5, 0.8, 0.8, 0.8, 0.2)]
    public void Believe_TestOfKnownSensitivity_GivesThePosterior(
        double prior, double sensitivity, double specificity, double ifPositive, double ifNegative)
    {
        Check test = Parts.Check("test", 1, 1 - specificity, ("ill", sensitivity));
        FaultGraph graph = Graph([Parts.Fault("ill", prior), Parts.Fault("well", 1 - prior)], [], [test]);
        Assert.Equal(ifPositive, graph.Believe([Evidence.Seen(test, Fail)]).ProbabilityOf(new FaultId("ill")), 1e-4);
        Assert.Equal(ifNegative, graph.Believe([Evidence.Seen(test, Pass)]).ProbabilityOf(new FaultId("ill")), 1e-5);
    }

    // Source: LR+ = se/(1 − sp), LR− = (1 − se)/sp (from memory); posterior odds are prior odds times LR.
    [Fact]
    public void Ledger_TestOfKnownSensitivity_HoldsTheLikelihoodRatio()
    {
        Check test = Parts.Check("test", 1, 0.05, ("ill", 0.9));
        FaultGraph graph = Graph([Parts.Fault("ill"), Parts.Fault("well")], [], [test]);
        Assert.Equal(18, Ratio(graph.Believe([Evidence.Seen(test, Fail)])), 1e-6);
        Assert.Equal(0.105263158, Ratio(graph.Believe([Evidence.Seen(test, Pass)])), 1e-6);

        static double Ratio(Belief belief) => Math.Exp(
            belief.Ledger[0].LogLikelihood[new FaultId("ill")] - belief.Ledger[0].LogLikelihood[new FaultId("well")]);
    }

    // Source: E. T. Jaynes, Probability Theory: The Logic of Science, section 4.2 (from memory): of machine A a third
    // of the widgets are bad, of machine B a sixth; a bad one is +3.0 dB for A, a good one −0.97 dB.
    [Theory]
    [InlineData("fail", 3.0103)]
    [InlineData("pass", -0.9691)]
    public void WeightFor_OneOfTwoHypotheses_IsTheRatioInDecibels(string seen, double decibels)
    {
        Check draw = Parts.Check("draw", 1, 1 / 6d, ("a", 1 / 3d));
        FaultGraph graph = Graph([Parts.Fault("a", 1 / 11d), Parts.Fault("b", 10 / 11d)], [], [draw]);
        LedgerLine line = graph.Believe([Evidence.Seen(draw, new OutcomeId(seen))]).Ledger[0];
        Assert.Equal(decibels, 10 * line.WeightFor(new FaultId("a")) / Math.Log(10), 1e-4);
        Assert.Equal(-decibels, 10 * line.WeightFor(new FaultId("b")) / Math.Log(10), 1e-4);
    }

    [Fact]
    public void WeightFor_WhatOneFaultCannotShow_RulesItOut()
    {
        Check look = Parts.Check("look", 1, 0, ("a", 1));
        FaultGraph graph = Graph([Parts.Fault("a"), Parts.Fault("b")], [], [look]);
        LedgerLine line = graph.Believe([Evidence.Seen(look, Fail)]).Ledger[0];
        Assert.Equal(double.NegativeInfinity, line.WeightFor(new FaultId("b")));
        Assert.Equal(double.PositiveInfinity, line.WeightFor(new FaultId("a")));
    }

    // Source: Bayes over several exclusive faults, prior times likelihood, normalised (from memory).
    [Fact]
    public void Believe_SeveralFaults_NormalisesPriorTimesLikelihood()
    {
        Symptom symptom = Parts.Symptom("s", ("a", 0.1), ("b", 0.8), ("c", 0.4));
        Belief belief = Graph([Parts.Fault("a", 0.5), Parts.Fault("b", 0.3), Parts.Fault("c", 0.2)], [symptom], [])
            .Believe([new Evidence.SymptomReported(symptom.Id)]);
        Assert.Equal(["b", "c", "a"], belief.Ranked.Select(ranked => ranked.Id.Value));
        Assert.Equal(0.648648649, belief.Ranked[0].Probability, 1e-6);
        Assert.Equal(0.216216216, belief.Ranked[1].Probability, 1e-6);
        Assert.Equal(0.135135135, belief.Ranked[2].Probability, 1e-6);
    }

    [Fact]
    public void Believe_UnsureReport_MixesPosteriorAndPrior()
    {
        Symptom symptom = Parts.Symptom("s", ("a", 0.1), ("b", 0.8), ("c", 0.4));
        Belief belief = Graph([Parts.Fault("a", 0.5), Parts.Fault("b", 0.3), Parts.Fault("c", 0.2)], [symptom], [])
            .Believe([new Evidence.SymptomReported(symptom.Id, 0.25)]);
        // A quarter of the sure posterior 0.648648649 and three quarters of the prior 0.3.
        Assert.Equal(0.25 * 0.648648649 + 0.75 * 0.3, belief.ProbabilityOf(new FaultId("b")), 1e-6);
    }

    // Told with doubt, and wrong: the fault that is present does not show it at all.
    [Fact]
    public void Believe_OneUnsureReport_LeavesEveryFaultInQuestion()
    {
        Check[] checks = [.. Enumerable.Range(1, 2).Select(n => Parts.Check($"c{n}", 1, 0.01, ("c", 0.99)))];
        FaultGraph graph = Graph(
            [Parts.Fault("a", 0.5), Parts.Fault("b", 0.3), Parts.Fault("c", 0.2)],
            [Parts.Symptom("s", ("a", 0.1), ("b", 0.8))], checks);
        Evidence report = new Evidence.SymptomReported(new("s"), 0.7);

        Belief told = graph.Believe([report]), shown =
            graph.Believe([report, .. checks.Select(check => Evidence.Seen(check, Fail))]);

        // What the report shows on average is 0.29 / 0.8; c comes with it 0.3 times as often as a symptom leaks.
        double average = 0.29 / 0.8, a = 0.5 * (0.07 + 0.3 * average), b = 0.3 * (0.56 + 0.3 * average), c =
            0.2 * 0.3 * Belief.Leak;
        Assert.Equal(b / (a + b + c), told.ProbabilityOf(new FaultId("b")), 1e-12);
        Assert.Equal(c / (a + b + c), told.ProbabilityOf(new FaultId("c")), 1e-12);
        Assert.Equal("c", shown.Ranked[0].Id.Value);
        Assert.False(shown.Contradicted);
    }

    [Fact]
    public void Believe_UnsureReportBesideASureOne_BringsInNoFaultThatNeitherLists()
    {
        FaultGraph graph = Graph(
            [Parts.Fault("a"), Parts.Fault("b"), Parts.Fault("c")],
            [Parts.Symptom("s", ("a", 0.5)), Parts.Symptom("t", ("b", 0.5))], []);
        Belief belief =
            graph.Believe([new Evidence.SymptomReported(new("s")), new Evidence.SymptomReported(new("t"), 0.7)]);
        Assert.Equal(["a", "b"], belief.Ranked.Select(ranked => ranked.Id.Value).Order(StringComparer.Ordinal));
    }

    // The surer a report, the less is left beside it; at 1 nothing is.
    [Fact]
    public void Believe_ReportAlmostSure_IsAlmostASureOne()
    {
        FaultGraph graph = Graph(
            [Parts.Fault("a"), Parts.Fault("b"), Parts.Fault("c")],
            [Parts.Symptom("s", ("a", 0.5)), Parts.Symptom("t", ("b", 0.4))], []);
        Belief sure = Of(1), almost = Of(1 - 1e-9);
        Assert.All(almost.Ranked, ranked => Assert.Equal(sure.ProbabilityOf(ranked.Id), ranked.Probability, 1e-6));

        Belief Of(double confidence) => graph.Believe(
            [new Evidence.SymptomReported(new("s"), confidence), new Evidence.SymptomReported(new("t"), confidence)]);
    }

    [Fact]
    public void Believe_SymptomReported_KeepsOnlyFaultsThatSomeSymptomLists()
    {
        FaultGraph graph = Graph(
            [Parts.Fault("a"), Parts.Fault("b"), Parts.Fault("c"), Parts.Fault(FaultId.NoneOfThese.Value)],
            [Parts.Symptom("s", ("a", 0.5)), Parts.Symptom("t", ("b", 0.5))], []);
        Belief belief = graph.Believe([new Evidence.SymptomReported(new("s")), new Evidence.SymptomReported(new("t"))]);
        // a and b explain one symptom each and leak into the other; "none of these" leaks into both.
        Assert.Equal(["a", "b", "none-of-these"], belief.Ranked.Select(ranked => ranked.Id.Value));
        Assert.Equal(0.5 / (0.5 + 0.5 + Belief.Leak), belief.Ranked[0].Probability, 1e-12);
    }

    [Fact]
    public void Believe_FaultTheUnitCannotHave_IsNoCandidate()
    {
        FaultGraph graph = Graph([Parts.Fault("a"), Parts.Fault("b")], [], []);
        Belief belief = graph.Believe([], new HashSet<FaultId> { new("b") });
        Assert.Equal([new RankedFault(new FaultId("b"), 1)], belief.Ranked.ToArray());
    }

    [Fact]
    public void Believe_ReadingNearALimit_WeighsTheOutcomeRows()
    {
        Check check = Parts.Check("c", 1, 0.2, ("a", 0.9));
        FaultGraph graph = Graph([Parts.Fault("a"), Parts.Fault("b")], [], [check]);
        Belief belief = graph.Believe([new Evidence.OutcomeSeen(check.Id, [0.25, 0.75])]);
        // a: 0.25 · 0.1 + 0.75 · 0.9 = 0.7; b: 0.25 · 0.8 + 0.75 · 0.2 = 0.35.
        Assert.Equal(2.0 / 3, belief.ProbabilityOf(new FaultId("a")), 1e-12);
    }

    [Fact]
    public void Believe_CheckAnsweredAgain_CountsTheLastAnswer()
    {
        Check check = Parts.Check("c", 1, 0.2, ("a", 0.9));
        FaultGraph graph = Graph([Parts.Fault("a"), Parts.Fault("b")], [], [check]);
        Belief corrected = graph.Believe([Evidence.Seen(check, Pass), Evidence.Seen(check, Fail)]);
        Assert.Equal(graph.Believe([Evidence.Seen(check, Fail)]).Ranked.ToArray(), corrected.Ranked.ToArray());
    }

    [Fact]
    public void Believe_RepairFailed_ExcludesWhatItCures()
    {
        FaultGraph graph = Graph(
            [Parts.Fault("a"), Parts.Fault("b"), Parts.Fault("c", 3)], [], [], Parts.Repair("r", 1, "a", "b"));
        Belief belief = graph.Believe([new Evidence.RepairFailed(new RepairId("r"))]);
        Assert.Equal(1, belief.ProbabilityOf(new FaultId("c")));
        Assert.False(belief.Exhausted);
    }

    // Bayes by hand: of even odds, a stays with a tenth of its likelihood: 0.1 / 1.1.
    [Fact]
    public void Believe_RepairFailedThatMayNotHold_LeavesTheFaultInQuestion()
    {
        FaultGraph graph = Graph([Parts.Fault("a"), Parts.Fault("b")], [], [], Parts.Repair("r", 1, "a"));
        Assert.Equal(0.1 / 1.1, graph.Believe([new Evidence.RepairFailed(new RepairId("r"), 0.1)])
            .ProbabilityOf(new FaultId("a")), 1e-12);
        Assert.Throws<ArgumentException>(() => graph.Believe([new Evidence.RepairFailed(new RepairId("r"), 1.1)]));
        Assert.Throws<ArgumentException>(() => graph.Believe([new Evidence.RepairFailed(new RepairId("r"), -0.1)]));
    }

    // Bayes by hand: of even odds, a stays with a tenth of its likelihood: 0.1 / 1.1.
    [Fact]
    public void Believe_FaultMended_LeavesWhatElseThereIs()
    {
        FaultGraph graph = Graph([Parts.Fault("a"), Parts.Fault("b")], [], [], Parts.Repair("r", 1, "a"));
        Assert.Equal(0, graph.Believe([new Evidence.FaultMended(new RepairId("r"))]).ProbabilityOf(new FaultId("a")));
        Assert.Equal(0.1 / 1.1, graph.Believe([new Evidence.FaultMended(new RepairId("r"), 0.1)])
            .ProbabilityOf(new FaultId("a")), 1e-12);
        Assert.Throws<ArgumentException>(() => graph.Believe([new Evidence.FaultMended(new RepairId("r"), 1.1)]));
    }

    [Fact]
    public void Believe_RepairWorked_LeavesOnlyWhatItCures()
    {
        FaultGraph graph = Graph(
            [Parts.Fault("a"), Parts.Fault("b"), Parts.Fault("c", 3)], [], [], Parts.Repair("r", 1, "a", "b"));
        Belief belief = graph.Believe([new Evidence.RepairWorked(new RepairId("r"))]);
        Assert.Equal(0.5, belief.ProbabilityOf(new FaultId("a")));
        Assert.Equal(0, belief.ProbabilityOf(new FaultId("c")));
    }

    [Fact]
    public void Believe_EveryRepairFailed_IsExhausted()
    {
        FaultGraph graph = Graph([Parts.Fault("a")], [], [], Parts.Repair("r", 1, "a"));
        Belief belief = graph.Believe([new Evidence.RepairFailed(new RepairId("r"))]);
        Assert.True(belief.Exhausted);
        Assert.Equal(0, belief.Ranked[0].Probability);
    }

    [Fact]
    public void Believe_OutcomesImpossibleUnderEveryFault_StillRanks()
    {
        Check first = Parts.Check("c1", 1, 0, ("a", 1));
        Check second = Parts.Check("c2", 1, 0, ("b", 1));
        FaultGraph graph = Graph([Parts.Fault("a", 2), Parts.Fault("b", 1)], [], [first, second]);
        Belief belief = graph.Believe([Evidence.Seen(first, Fail), Evidence.Seen(second, Fail)]);
        Assert.True(belief.Contradicted);
        Assert.Equal([first.Id, second.Id], belief.Conflicts.ToArray());
        Assert.Equal(2.0 / 3, belief.ProbabilityOf(new FaultId("a")), 1e-12);
    }

    [Fact]
    public void Ledger_Outcome_TellsHowMuchItWasExpected()
    {
        Check check = Parts.Check("c", 1, 0.1, ("a", 0.7));
        Belief belief = Graph([Parts.Fault("a"), Parts.Fault("b")], [], [check]).Believe([Evidence.Seen(check, Fail)]);
        Assert.Equal(0.4, belief.Ledger[0].Expected, 1e-12);
    }

    public static TheoryData<Evidence> Senseless =>
    [
        new Evidence.SymptomReported(new SymptomId("unknown")),
        new Evidence.SymptomReported(new SymptomId("s"), 0),
        new Evidence.SymptomReported(new SymptomId("s"), 1.01),
        new Evidence.OutcomeSeen(new CheckId("unknown"), [1, 0]),
        new Evidence.OutcomeSeen(new CheckId("c"), [1]),
        new Evidence.OutcomeSeen(new CheckId("c"), [0, 0]),
        new Evidence.OutcomeSeen(new CheckId("c"), [-1, 2]),
        new Evidence.OutcomeSeen(new CheckId("c"), [double.NaN, 1]),
        new Evidence.RepairFailed(new RepairId("unknown")),
        new Evidence.RepairWorked(new RepairId("unknown")),
    ];

    [Theory]
    [MemberData(nameof(Senseless))]
    public void Believe_SenselessEvidence_Throws(Evidence evidence)
    {
        FaultGraph graph = Graph(
            [Parts.Fault("a"), Parts.Fault("b")], [Parts.Symptom("s", ("a", 1))], [Parts.Check("c", 1, 0, ("a", 1))]);
        Assert.Throws<ArgumentException>(() => graph.Believe([evidence]));
    }

    // Weights need not sum to 1: only their proportion counts, for the belief and for how well it fits.
    [Fact]
    public void Believe_WeightsOfAnyScale_CountByTheirProportion()
    {
        Check check = Parts.Check("c", 1, 0.2, ("a", 0.9));
        FaultGraph graph = Graph([Parts.Fault("a"), Parts.Fault("b")], [], [check]);
        Belief half = graph.Believe([new Evidence.OutcomeSeen(check.Id, [0.5, 0.5])]), ten =
            graph.Believe([new Evidence.OutcomeSeen(check.Id, [10, 10])]);
        Assert.Equal(half.Ranked.ToArray(), ten.Ranked.ToArray());
        Assert.Equal(half.Fit, ten.Fit);
        // Under each fault an even share of both outcomes: 0.5 / 0.9 of what a shows most, 0.5 / 0.8 of what b does.
        Assert.Equal(0.5 / 0.8, half.Fit, 1e-12);
    }

    [Fact]
    public void Ledger_SeveralPieces_StandInTheOrderOfTelling()
    {
        Check[] checks = [Parts.Check("z", 1, 0.2, ("a", 0.9)), Parts.Check("a", 1, 0.2, ("a", 0.9)),
            Parts.Check("m", 1, 0.2, ("a", 0.9))];
        Belief belief = Graph([Parts.Fault("a"), Parts.Fault("b")], [], checks)
            .Believe([.. checks.Select(check => Evidence.Seen(check, Fail))]);
        Assert.Equal(["z", "a", "m"], belief.Ledger.Select(line => ((Evidence.OutcomeSeen)line.Evidence).Check.Value));
        Assert.All(belief.Ledger, line => Assert.Equal(1, line.Before.Values.Sum(), 1e-12));
    }

    // Posterior odds are prior odds times the odds that the earlier work gives: 1 : 1 with a four times likelier.
    [Fact]
    public void Believe_RepairedEarlier_MultipliesTheOddsOfTheFaultsNamed()
    {
        FaultGraph graph = Graph([Parts.Fault("a"), Parts.Fault("b")], [], [], Parts.Repair("r", 1, "a"));
        Assert.Equal(0.8, graph.Believe([Earlier(4)]).ProbabilityOf(new FaultId("a")), 1e-12);
        Assert.Equal(0.2, graph.Believe([Earlier(0.25)]).ProbabilityOf(new FaultId("a")), 1e-12);
        Assert.Equal(0.8, graph.Believe([Earlier(0.25), Earlier(4)]).ProbabilityOf(new FaultId("a")), 1e-12);
        // Made earlier and made now are two things: the failure of today still rules out.
        Assert.Equal(0, graph.Believe([Earlier(4), new Evidence.RepairFailed(new RepairId("r"))])
            .ProbabilityOf(new FaultId("a")));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Believe_EarlierOddsOutOfRange_Throws(double odds)
    {
        FaultGraph graph = Graph([Parts.Fault("a"), Parts.Fault("b")], [], [], Parts.Repair("r", 1, "a"));
        ImmutableSortedDictionary<FaultId, double> mixed = Odds(odds).SetItem(new FaultId("b"), 1);
        Assert.Throws<ArgumentException>(() => graph.Believe([new Evidence.RepairedEarlier(new RepairId("r"), mixed)]));
    }

    // Total probability and Bayes, by hand: fail 0.5 · 0.9 + 0.5 · 0.2 = 0.55, and then a with 0.45 / 0.55.
    [Fact]
    public void Foresee_Check_TellsWhatItMayShowAndWhatIsBelievedThen()
    {
        Check check = Parts.Check("c", 1, 0.2, ("a", 0.9));
        Belief belief = Graph([Parts.Fault("a"), Parts.Fault("b")], [], [check]).Believe([]);
        Foreseen[] seen = [.. belief.Foresee(check)];
        Assert.Equal([Pass, Fail], seen.Select(one => one.Outcome));
        Assert.Equal([0.45, 0.55], seen.Select(one => Math.Round(one.Probability, 12)));
        Assert.Equal(["b", "a"], seen.Select(one => one.Likeliest.Value));
        Assert.Equal(0.4 / 0.45, seen[0].Share, 1e-12);
        Assert.Equal(0.45 / 0.55, seen[1].Share, 1e-12);
    }

    [Fact]
    public void Foresee_OutcomeThatCannotCome_IsLeftOut()
    {
        Check check = Parts.Check("c", 1, 0, ("a", 0));
        Foreseen only =
            Assert.Single(Graph([Parts.Fault("a"), Parts.Fault("b")], [], [check]).Believe([]).Foresee(check));
        Assert.Equal((Pass, 1), (only.Outcome, only.Probability));
        // As likely as each other: the first of them.
        Assert.Equal(("a", 0.5), (only.Likeliest.Value, only.Share));
    }

    [Fact]
    public void Seen_UnknownOutcome_Throws() =>
        Assert.Throws<ArgumentException>(() => Evidence.Seen(Parts.Check("c", 1, 0), new OutcomeId("maybe")));

    private static Evidence.RepairedEarlier Earlier(double odds) => new(new RepairId("r"), Odds(odds));

    private static ImmutableSortedDictionary<FaultId, double> Odds(double odds) =>
        ImmutableSortedDictionary<FaultId, double>.Empty.Add(new FaultId("a"), odds);

    private static FaultGraph Graph(Fault[] faults, Symptom[] symptoms, Check[] checks, params Repair[] repairs) =>
        FaultGraph.Build(faults, symptoms, checks, repairs, AccessStates.OnlyOne);
}
