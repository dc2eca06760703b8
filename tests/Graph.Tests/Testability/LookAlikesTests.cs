using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Graph.Testability;

namespace DxAssistant.Graph.Tests.Testability;

public sealed class LookAlikesTests
{
    // By hand: a check that errs one time in ten has the coefficient 2·√(0.9·0.1) = 0.6; four of them 0.1296, five
    // 0.0778.
    [Theory]
    [InlineData(1, 0.6, true)]
    [InlineData(4, 0.1296, true)]
    [InlineData(5, 0.07776, false)]
    public void Of_ChecksThatErrOneTimeInTen_TellApartFromTheFifth(int checks, double coefficient, bool alike)
    {
        Assert.Equal(coefficient, LookAlikes.Coefficient(new FaultId("a"), new FaultId("b"), Noisy(checks)), 1e-9);
        SymptomFigures figures = Figures(Noisy(checks));
        Assert.Equal(alike ? 2 : 1, figures.MeanLookAlikes, 1e-12);
        Assert.Equal(alike ? 0 : 1, figures.SurelyIsolatableTo(1), 1e-12);
        Assert.Equal(1, figures.SurelyIsolatableTo(2), 1e-12);
        Assert.Equal((1, 1), (figures.MeanGroup, figures.IsolatableTo(1)));
    }

    // Kailath 1967: the best decision between two equally likely faults errs in at most half of the coefficient. The
    // error is reckoned from the binomial distribution: more than half of five checks err, each one time in ten.
    [Fact]
    public void Coefficient_FiveChecks_HoldsTheErrorOfTheBestDecision()
    {
        double error = 10 * Math.Pow(0.1, 3) * Math.Pow(0.9, 2) + 5 * Math.Pow(0.1, 4) * 0.9 + Math.Pow(0.1, 5);
        Assert.InRange(error, 0, LookAlikes.Coefficient(new FaultId("a"), new FaultId("b"), Noisy(5)) / 2);
    }

    // The best decision between two faults goes by the majority of checks that err alike; the error is reckoned from
    // the binomial distribution.
    [Fact]
    public void Worst_FiveChecks_HasTheErrorOfTheMajority() =>
        Assert.Equal(0.00856, LeastError.Between(new FaultId("a"), new FaultId("b"), Noisy(5)), 1e-5);

    // Kailath 1967: with the coefficient c the error is at most c/2 and no less than (1 - sqrt(1 - c²))/2. By hand: one
    // time in ten.
    [Theory]
    [InlineData(1, 0.1)]
    [InlineData(2, 0.1)]
    [InlineData(3, 0.028)]
    public void Worst_FewChecks_NamesThePairWithItsError(int checks, double error)
    {
        MistakenPair pair = Assert.Single(Figures(Noisy(checks)).Mistaken);
        double coefficient = LookAlikes.Coefficient(pair.One, pair.Other, Noisy(checks));
        Assert.Equal(("a", "b"), (pair.One.Value, pair.Other.Value));
        Assert.Equal(error, pair.Error, 1e-4);
        Assert.InRange(pair.Error, (1 - Math.Sqrt(1 - coefficient * coefficient)) / 2 - 1e-4, coefficient / 2);
    }

    [Fact]
    public void Worst_FaultsThatOneRepairCures_AreNotNamed()
    {
        FaultGraph graph = Graph(Noisy(1), Parts.Repair("rab", 10, "a", "b"));
        Assert.Empty(Assess(graph).Mistaken);
    }

    [Fact]
    public void Worst_FaultsThatChecksTellApart_AreNotNamed() => Assert.Empty(Figures(Noisy(5)).Mistaken);

    // No check sees a difference between a and b, one tells c from either: a and b come first, and err half of the
    // time.
    [Fact]
    public void Worst_ThreeFaults_TheWorstPairComesFirst()
    {
        FaultGraph graph = FaultGraph.Build(
            [Parts.Fault("a"), Parts.Fault("b"), Parts.Fault("c")], [Parts.Symptom("s", ("a", 1), ("b", 1), ("c", 1))],
            [Parts.Check("c1", 1, 0.1, ("c", 0.9))],
            [Parts.Repair("ra", 10, "a"), Parts.Repair("rb", 10, "b"), Parts.Repair("rc", 10, "c")],
            AccessStates.OnlyOne);
        Assert.Equal([("a", "b", 0.5), ("a", "c", 0.1), ("b", "c", 0.1)],
            Assess(graph).Mistaken.Select(pair => (pair.One.Value, pair.Other.Value, Math.Round(pair.Error, 3))));
    }

    private static Check[] Noisy(int checks) =>
        [.. Enumerable.Range(1, checks).Select(number => Parts.Check($"c{number}", 1, 0.1, ("a", 0.9)))];

    private static SymptomFigures Figures(Check[] checks) =>
        Assess(Graph(checks, Parts.Repair("ra", 10, "a"), Parts.Repair("rb", 10, "b")));

    private static FaultGraph Graph(Check[] checks, params Repair[] repairs) => FaultGraph.Build(
        [Parts.Fault("a"), Parts.Fault("b")], [Parts.Symptom("s", ("a", 1), ("b", 1))], checks, repairs,
        AccessStates.OnlyOne);

    private static SymptomFigures Assess(FaultGraph graph) =>
        new Assessment(graph, new Situation(new Role("technician", 2), Parts.Any), new LivePlanner()).Assess(0,
            1).Symptoms[0];
}
