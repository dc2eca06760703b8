using DxAssistant.Bot.Tests.Cases;
using Xunit.Abstractions;

namespace DxAssistant.Bot.Tests.Faults;

/// <summary>
/// Three programs on one database. <c>DX_KILLS</c> says how often a program is killed and how often the database.
/// </summary>
[NeedsPostgres]
public sealed class ManyServersTests(ITestOutputHelper output)
{
    [StoreFact]
    public async Task Talk_ProgramsAndDatabaseAreKilled_NoAcknowledgedTurnIsLostOrDoubled() =>
        output.WriteLine($"seed {FaultSize.Seed}, {await ManyServers.RunAsync(FaultSize.Kills, FaultSize.Seed)}");
}
