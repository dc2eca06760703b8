using DxAssistant.Bot.Tests.Cases;
using Xunit.Abstractions;

namespace DxAssistant.Bot.Tests.Faults;

/// <summary><c>DX_CUTS</c> says how often the network is cut of each kind.</summary>
[NeedsPostgres]
public sealed class CutNetworkTests(ITestOutputHelper output)
{
    [StoreFact]
    public async Task Talk_NetworkToTheDatabaseIsCut_NoAcknowledgedTurnIsLostOrDoubled() =>
        output.WriteLine($"seed {FaultSize.Seed}, {await CutNetwork.RunAsync(FaultSize.Cuts, FaultSize.Seed)}");
}
