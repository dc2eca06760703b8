using Xunit.Abstractions;

namespace DxAssistant.Bot.Tests.Faults;

/// <summary>A few seconds of what the group <c>soak</c> of the benchmarks does for hours.</summary>
public sealed class SoakTests(ITestOutputHelper output)
{
    // Connections of people and readers come and go; one kept for each conversation would be many more.
    private const int FewHandles = 40;

    [Fact]
    public async Task Talk_ForAWhile_HandlesAndThreadsDoNotGrowWithTheTurns()
    {
        var samples = await new Soak(people: 6, TimeSpan.Zero, FaultSize.Seed,
            sample => output.WriteLine($"{sample}")).RunAsync(TimeSpan.FromSeconds(6), looks: 3);
        Assert.InRange(samples[^1].Handles - samples[0].Handles, int.MinValue, FewHandles);
        Assert.InRange(samples[^1].Threads - samples[0].Threads, int.MinValue, FewHandles);
    }
}
