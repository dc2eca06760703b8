using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Graph.Testability;

namespace DxAssistant.Graph.Tests.Testability;

public sealed class PriceTradeTests
{
    private const int Walks = 400;

    // By hand, parts for 40 min: to check first takes 20 + (10 + 12)/2 = 31 min; to try ra first 10 + (40 + 12)/2 = 36.
    // With parts for nothing the latter takes 16, half of all units get a part in vain, and each part saved costs
    // 15/0.5 = 30 min.
    [Fact]
    public void At_PartsForNothing_TradesMinutesForParts()
    {
        var trade = new PriceTrade((Problem(40), new LivePlanner()), Walks, seed: 3);
        PricePoint free = trade.At(0, (Problem(0), new LivePlanner())), own =
            trade.At(1, (Problem(40), new LivePlanner()));
        Assert.Equal((0, Estimate.Exactly(0), Estimate.Exactly(0)),
            (own.PartsInVain.Value, own.MinutesMore, own.PartsSaved));
        Within(31, own.Minutes);
        Within(16, free.Minutes);
        Within(0.5, free.PartsInVain);
        Within(-15, free.MinutesMore);
        Within(30, new Estimate(free.MinutesMore.Value / free.PartsSaved.Value, 2));
    }

    [Fact]
    public void At_DearerParts_SavesNoneMoreWhereNoneIsChangedForNothing()
    {
        PricePoint dear =
            new PriceTrade((Problem(40), new LivePlanner()), Walks, seed: 3).At(4, (Problem(160), new LivePlanner()));
        Assert.Equal((0, 0), (dear.PartsInVain.Value, dear.PartsSaved.Value));
    }

    [Fact]
    public void Mixture_TwoSymptoms_WeighsThem()
    {
        PricePoint one = new(2, 50, new(10, 3), new(0.5, 0), new(1, 0), new(0.2, 0)), other =
            new(2, 50, new(20, 4), new(0.1, 0), new(3, 0), new(0, 0));
        PricePoint mixed = PricePoint.Mixture([(0.5, one), (0.5, other)]);
        Assert.Equal((2, 100, new Estimate(15, 2.5), 0.3, 2, 0.1),
            (mixed.Factor, mixed.Walks, mixed.Minutes, mixed.PartsInVain.Value, mixed.MinutesMore.Value,
                mixed.PartsSaved.Value));
    }

    // The interval holds 19 of 20 times; half as much again nearly always.
    private static void Within(double expected, Estimate found) =>
        Assert.InRange(expected, found.Value - 1.5 * found.HalfWidth, found.Value + 1.5 * found.HalfWidth);

    private static SequencingProblem Problem(double wrongMinutes) => new(
        Objective.Repair, [Parts.Fault("a"), Parts.Fault("b")], [Parts.Check("check", 20, 0, ("b", 1))],
        [Parts.Repair("ra", 10, "a") with { WrongMinutes = wrongMinutes }, Parts.Repair("rb", 12, "b")
            with { WrongMinutes = wrongMinutes }],
        AccessStates.OnlyOne);
}
