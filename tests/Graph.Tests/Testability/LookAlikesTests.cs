using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Graph.Testability;

namespace DxAssistant.Graph.Tests.Testability;

public sealed class LookAlikesTests
{
    // By hand: a check that errs one time in ten has the coefficient 2·√(0.9·0.1) = 0.6; four of them 0.1296, five 0.0778.
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

    // Kailath 1967: the best decision between two equally likely faults errs in at most half of the coefficient. The error is
    // reckoned from the binomial distribution: more than half of five checks err, each one time in ten.
    [Fact]
    public void Coefficient_FiveChecks_HoldsTheErrorOfTheBestDecision()
    {
        double error = 10 * Math.Pow(0.1, 3) * Math.Pow(0.9, 2) + 5 * Math.Pow(0.1, 4) * 0.9 + Math.Pow(0.1, 5);
        Assert.InRange(error, 0, LookAlikes.Coefficient(new FaultId("a"), new FaultId("b"), Noisy(5)) / 2);
    }

    private static Check[] Noisy(int checks) => [.. Enumerable.Range(1, checks).Select(number => Parts.Check($"c{number}", 1, 0.1, ("a", 0.9)))];

    private static SymptomFigures Figures(Check[] checks)
    {
        FaultGraph graph = FaultGraph.Build(
            [Parts.Fault("a"), Parts.Fault("b")], [Parts.Symptom("s", ("a", 1), ("b", 1))], checks,
            [Parts.Repair("ra", 10, "a"), Parts.Repair("rb", 10, "b")], AccessStates.OnlyOne);
        return new Assessment(graph, new Situation(new Role("technician", 2), Parts.Any), new LivePlanner()).Assess(0, 1).Symptoms[0];
    }
}
