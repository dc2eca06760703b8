using DxAssistant.Server.Simulating;

namespace DxAssistant.Bot.Tests.Server.Simulating;

public sealed class WalkTallyTests
{
    // Source: computed by hand from Wilson (1927), z = 1.96: 0 of 10 gives 3.8416 / (10 + 3.8416) = 0.2775.
    [Fact]
    public void Wilson_NoHits_ReachesUpToZSquaredOverNPlusZSquared()
    {
        (double low, double high) = WalkTally.Wilson(0, 10);
        Assert.Equal(0, low);
        Assert.Equal(0.2775, high, tolerance: 0.00005);
    }

    [Fact]
    public void Wilson_NothingPlayed_KnowsNothing() => Assert.Equal((0, 1), WalkTally.Wilson(0, 0));

    // By hand: of four walks two were booked, one of these with a part for nothing; of the two others one with two
    // parts.
    [Fact]
    public void Of_WalksThatWereBooked_CountsWrongPartsOfTheOthersApart()
    {
        WalkTally tally = WalkTally.Of(
            [Walk(WalkEnd.Booked, 0), Walk(WalkEnd.Booked, 1), Walk(WalkEnd.Proven, 0), Walk(WalkEnd.Missed, 2)]);
        Assert.Equal((4, 2, 1), (tally.Walks, tally.Within, tally.Proven));
        Assert.Equal((3, 2, 2, 1),
            (tally.WrongParts, tally.WrongWalks, tally.WrongPartsWithin, tally.WrongWalksWithin));
        Assert.Equal((0.75, 1.0), (tally.WrongPartsPerWalk, tally.WrongPartsPerWalkWithin));
    }

    [Fact]
    public void Write_WalksThatWereBooked_ShowsTheShareOfThoseThatWereNot()
    {
        using var report = new StringWriter();
        SimulationReport.Write(report, new SimulationOrder(1, 1, null, null, null),
            [Walk(WalkEnd.Booked, 0), Walk(WalkEnd.Proven, 1)]);
        string[] lines = report.ToString().Split('\n');
        string[] heads = lines.First(line => line.StartsWith("| |", StringComparison.Ordinal))
            .Split('|', StringSplitOptions.TrimEntries);
        string[] all = lines.First(line => line.StartsWith("| all |", StringComparison.Ordinal))
            .Split('|', StringSplitOptions.TrimEntries);
        Assert.Equal(heads.Length, all.Length);
        Assert.StartsWith("50.0 ", all[Array.IndexOf(heads, "with a wrong part, %")], StringComparison.Ordinal);
        Assert.StartsWith("100.0 ", all[Array.IndexOf(heads, "the same of those not booked, %")],
            StringComparison.Ordinal);
    }

    [Fact]
    public void Of_WalksLeftToOthers_CountsThoseThatNameTheFault()
    {
        WalkTally tally = WalkTally.Of([Walk(WalkEnd.Booked, 0), Walk(WalkEnd.Booked, 0) with { IsNamed = true },
            Walk(WalkEnd.Proven, 0) with { IsNamed = true }]);
        Assert.Equal(1, tally.Named);
    }

    private static SimulatedWalk Walk(WalkEnd end, int wrongParts) =>
        new(new SimulatedCase("a", "one", "technician", "f", 1), end, [], 10, 1, wrongParts, IsNamed: false);
}
