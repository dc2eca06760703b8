using Xunit.Abstractions;

namespace DxAssistant.Bot.Tests.Faults;

/// <summary>The program is killed at any moment. <c>DX_KILLS</c> says how often.</summary>
public sealed class KilledServerTests(ITestOutputHelper output)
{
    [Fact]
    public async Task Kill_AtAnyMoment_EveryAcknowledgedTurnIsThereOnceAndWhole() =>
        output.WriteLine($"seed {FaultSize.Seed}, {await KilledServer.RunAsync(FaultSize.Kills, FaultSize.Seed)}");
}
