using Xunit.Abstractions;

namespace DxAssistant.Bot.Tests.Faults;

/// <summary>The files as they lie on the disk at any moment. <c>DX_KILLS</c> says how many moments.</summary>
public sealed class LostPowerTests(ITestOutputHelper output)
{
    [Fact]
    public async Task Copy_AtAnyMoment_HoldsEveryAcknowledgedTurnAndIsReadableHoweverItEnds() =>
        output.WriteLine($"seed {FaultSize.Seed}, {await LostPower.RunAsync(FaultSize.Kills, FaultSize.Seed)}");
}
