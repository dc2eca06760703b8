using DxAssistant.Graph.Model;
using DxAssistant.Graph.Testability;
using DxAssistant.Server.Workbench.Comparing;

namespace DxAssistant.Bot.Tests.Server.Workbench;

public sealed class FloorsTests
{
    private static readonly Floors Asked = new(Minutes: 5, InVain: 0.2, Isolated: 5, Conclusions: null);

    [Theory]
    [InlineData(100, 106, 0, "broken")] // exact figures: every minute counts
    [InlineData(100, 105, 0, "")]
    [InlineData(100, 94, 0, "")]
    [InlineData(100, 106, 10, "perhaps")] // within what 100 walks leave open on both sides: √(10² + 10²)
    [InlineData(100, 115, 10, "broken")]
    public void BrokenBy_MoreMinutes_SaysWhetherItMayBeChance(double before, double after, double half, string expected) =>
        Assert.Equal(expected, string.Concat(Asked.BrokenBy(Changed(Walks(before, half, 0.9), Walks(after, half, 0.9)))
            .Select(floor => floor.MayBeChance ? "perhaps" : "broken")));

    [Fact]
    public void BrokenBy_FewerMendedByTheFirstRepair_IsSaidInPoints() =>
        Assert.Equal(new BrokenFloor("one, dead: mended by the first repair 40.00 points less often"),
            Assert.Single(Asked.BrokenBy(Changed(Walks(100, 0, 0.9), Walks(100, 0, 0.5)))));

    [Fact]
    public void BrokenBy_NothingToWalkAnyMore_BreaksAnyFloor() =>
        Assert.Equal(new BrokenFloor("one, dead: nothing can be walked any more"), Assert.Single(Asked.BrokenBy(Changed(Walks(100, 0, 0.9), null))));

    [Fact]
    public void BrokenBy_SymptomThatIsGone_BreaksAnyFloor() =>
        Assert.Equal(new BrokenFloor("one, dead: gone"), Assert.Single(Asked.BrokenBy(new("one", "dead", Figures(Walks(100, 0, 0.9)), null, []))));

    private static ChangedSymptom Changed(WalkFigures? before, WalkFigures? after) => new("one", "dead", Figures(before), Figures(after), []);

    private static SymptomFigures Figures(WalkFigures? walks) => new(new SymptomId("dead"), 1, 2, 1, [], walks, null, null, null);

    private static WalkFigures Walks(double minutes, double half, double first) => new(
        half == 0, 100, Estimate.Exactly(1), new Estimate(minutes, half), Estimate.Exactly(0), Estimate.Exactly(0),
        [Estimate.Exactly(first), Estimate.Exactly(1), Estimate.Exactly(1)]);
}
