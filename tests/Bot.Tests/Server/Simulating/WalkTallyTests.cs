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
}
