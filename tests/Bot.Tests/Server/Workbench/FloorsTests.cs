using DxAssistant.Graph.Model;
using DxAssistant.Graph.Testability;
using DxAssistant.Server.Workbench.Comparing;

namespace DxAssistant.Bot.Tests.Server.Workbench;

public sealed class FloorsTests
{
    private static readonly Floors Asked = new(Minutes: 5, InVain: 0.2, Isolated: 5, Conclusions: null);

    [Theory]
    [InlineData(106, "broken")] // exact figures: every minute counts
    [InlineData(105, "")]
    [InlineData(94, "")]
    public void BrokenBy_MoreMinutesOfExactWalks_IsBroken(double after, string expected) =>
        Assert.Equal(expected, Said(Changed(Walks(100, 0.9), Walks(after, 0.9))));

    // What walks on the same units differ by decides, not what each side by itself leaves open.
    [Theory]
    [InlineData(6, 5.9, "broken")]
    [InlineData(6, 6.1, "perhaps")]
    [InlineData(4, 0.1, "")]
    public void BrokenBy_MoreMinutesOfPlayedWalks_SaysWhetherItMayBeChance(double rise, double half, string expected) =>
        Assert.Equal(expected, Said(Changed(Walks(100, 0.9), Walks(100 + rise, 0.9)) with
        {
            Played = new PairedWalks(Walks(100, 0.9), Walks(100 + rise, 0.9), new Estimate(rise, half),
                Estimate.Exactly(0), Estimate.Exactly(0)),
        }));

    [Fact]
    public void BrokenBy_FewerMendedByTheFirstRepair_IsSaidInPoints() =>
        Assert.Equal(new BrokenFloor("one, dead: mended by the first repair 40.00 points less often"),
            Assert.Single(Asked.BrokenBy(Changed(Walks(100, 0.9), Walks(100, 0.5)))));

    [Fact]
    public void BrokenBy_NothingToWalkAnyMore_BreaksAnyFloor() =>
        Assert.Equal(new BrokenFloor("one, dead: nothing can be walked any more"),
            Assert.Single(Asked.BrokenBy(Changed(Walks(100, 0.9), null))));

    [Fact]
    public void BrokenBy_SymptomThatIsGone_BreaksAnyFloor() =>
        Assert.Equal(new BrokenFloor("one, dead: gone"),
            Assert.Single(Asked.BrokenBy(new("one", "dead", Figures(Walks(100, 0.9)), null, []))));

    private static string Said(ChangedSymptom changed) =>
        string.Concat(Asked.BrokenBy(changed).Select(floor => floor.MayBeChance ? "perhaps" : "broken"));

    private static ChangedSymptom Changed(WalkFigures? before, WalkFigures? after) =>
        new("one", "dead", Figures(before), Figures(after), []);

    private static SymptomFigures Figures(WalkFigures? walks) =>
        new(new SymptomId("dead"), 1, 2, 1, [], [], [], walks, null, null, null);

    private static WalkFigures Walks(double minutes, double first) => new(
        IsExact: true, 100, Estimate.Exactly(1), Estimate.Exactly(minutes), Estimate.Exactly(0), Estimate.Exactly(0),
        Estimate.Exactly(0),
        [Estimate.Exactly(first), Estimate.Exactly(1), Estimate.Exactly(1)]);
}
