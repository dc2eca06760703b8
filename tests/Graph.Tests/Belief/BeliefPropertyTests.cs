using CsCheck;
using DxAssistant.Graph.Model;
using Check = DxAssistant.Graph.Model.Check;

namespace DxAssistant.Graph.Tests.BeliefTests;

/// <summary>CsCheck prints the seed of a case that fails.</summary>
public sealed class BeliefPropertyTests
{
    private const int Faults = 5;
    private const int Checks = 4;

    private static readonly Gen<(double[] Priors, double[] Fails, int[] Seen, int[] Order)> Cases = Gen.Select(
        Gen.Double[0.01, 1].Array[Faults],
        Gen.Double[0.01, 0.99].Array[Faults * Checks],
        Gen.Int[0, 1].Array[Checks],
        Gen.Shuffle(Enumerable.Range(0, Checks).ToArray()));

    [Fact]
    public void Believe_AnyOutcomes_AgreesWithPriorTimesLikelihood() => Cases.Sample(test =>
    {
        (FaultGraph graph, Evidence[] evidence) = Build(test.Priors, test.Fails, test.Seen);
        Belief belief = graph.Believe(evidence);
        double[] joint =
            [.. Enumerable.Range(0, Faults).Select(fault => test.Priors[fault] * Enumerable.Range(0, Checks)
                .Select(check => test.Seen[check] == 1 ? test.Fails[fault * Checks + check] : 1
                    - test.Fails[fault * Checks + check])
                .Aggregate(1.0, (product, likelihood) => product * likelihood))];
        for (int fault = 0; fault < Faults; fault++)
            Assert.Equal(joint[fault] / joint.Sum(), belief.ProbabilityOf(new FaultId($"f{fault}")), 1e-12);
    });

    [Fact]
    public void Believe_EvidenceInAnotherOrder_RanksTheSameToTheLastBit() => Cases.Sample(test =>
    {
        (FaultGraph graph, Evidence[] evidence) = Build(test.Priors, test.Fails, test.Seen);
        Belief inOrder = graph.Believe(evidence);
        Belief shuffled = graph.Believe(test.Order.Select(place => evidence[place]));
        Assert.Equal(inOrder.Ranked.ToArray(), shuffled.Ranked.ToArray());
        Assert.Equal(inOrder.Fit, shuffled.Fit);
        Assert.Equal(inOrder.Conflicts.ToArray(), shuffled.Conflicts.ToArray());
    });

    // Any answers first, some of them corrected afterwards: as if the last answers had been the only ones.
    [Fact]
    public void Believe_AnswersCorrected_IsRecomputedFromTheLastAnswers() =>
        Gen.Select(Cases, Gen.Int[0, 1].Array[Checks], Gen.Int[1, Checks]).Sample((test, mistaken, corrected) =>
        {
            (FaultGraph graph, Evidence[] evidence) = Build(test.Priors, test.Fails, test.Seen);
            (_, Evidence[] before) = Build(test.Priors, test.Fails, mistaken);
            int[] again = test.Order[..corrected];
            IEnumerable<Evidence> first = Enumerable.Range(0, Checks)
                .Select(place => again.Contains(place) ? before[place] : evidence[place]);
            Belief inTheEnd = graph.Believe(first.Concat(again.Select(place => evidence[place])));
            Belief atOnce = graph.Believe(evidence);
            Assert.Equal(atOnce.Ranked.ToArray(), inTheEnd.Ranked.ToArray());
            Assert.Equal(atOnce.Fit, inTheEnd.Fit);
        });

    // Weights of evidence add up: prior odds and all weights make the odds in the end (Good 1950, from memory).
    [Fact]
    public void WeightFor_AllLinesOfALedger_AddUpToTheChangeOfTheOdds() => Cases.Sample(test =>
    {
        (FaultGraph graph, Evidence[] evidence) = Build(test.Priors, test.Fails, test.Seen);
        Belief belief = graph.Believe(evidence);
        for (int fault = 0; fault < Faults; fault++)
        {
            FaultId id = new($"f{fault}");
            double before = LogOdds(test.Priors[fault] / test.Priors.Sum());
            Assert.Equal(LogOdds(belief.ProbabilityOf(id)), before
                + belief.Ledger.Sum(line => line.WeightFor(id)), 1e-6);
        }

        static double LogOdds(double probability) => Math.Log(probability / (1 - probability));
    });

    private static (FaultGraph Graph, Evidence[] Evidence) Build(double[] priors, double[] fails, int[] seen)
    {
        Check[] checks = [.. Enumerable.Range(0, Checks).Select(check => Parts.Check($"c{check}", 1, 0.5,
            [.. Enumerable.Range(0, Faults).Select(fault => ($"f{fault}", fails[fault * Checks + check]))]))];
        FaultGraph graph = FaultGraph.Build(
            priors.Select((prior, fault) => Parts.Fault($"f{fault}", prior)), [], checks, [], AccessStates.OnlyOne);
        return (graph, [.. checks.Select((check, place) => Evidence.Seen(check, check.Outcomes[seen[place]]))]);
    }
}
