using DxAssistant.Bot.Tests.Cases;
using DxAssistant.Bot.Tests.Conversation;
using DxAssistant.Bot.Tests.Load;
using DxAssistant.Cases.Sqlite;
using Xunit.Abstractions;

namespace DxAssistant.Bot.Tests.Faults;

/// <summary>The program itself, in a process of its own, is killed at any moment while people talk to it, and started again.</summary>
/// <remarks><c>DX_KILLS=1000 dotnet test tests/Bot.Tests --filter KilledServer --logger "console;verbosity=detailed"</c> goes on for long.</remarks>
public sealed class KilledServerTests(ITestOutputHelper output)
{
    private const int People = 6;

    // Long enough to take some turns, short enough to be killed within them.
    private const int MostMilliseconds = 600;

    [Fact]
    public async Task Kill_AtAnyMoment_EveryAcknowledgedTurnIsThereOnceAndWhole()
    {
        output.WriteLine($"seed {FaultSize.Seed}, {FaultSize.Kills} kills");
        using var folder = new TemporaryFolder();
        string file = folder.File("cases.db");
        var random = new Random(FaultSize.Seed);
        Uri[] there = [];
        await using var talkers = new Talkers(new WalkRecorder(ShippedContent.Assistant).Record(People, FaultSize.Seed), () => there);
        talkers.Begin(People);
        for (int kill = 0; kill <= FaultSize.Kills; kill++)
        {
            await using var server = await ServerProcess.StartAsync("--data", file);
            there = [server.Address];
            await talkers.AnsweredAsync(2);
            if (kill == FaultSize.Kills) await talkers.EndAsync();
            else await Task.Delay(random.Next(MostMilliseconds));
            there = [];
            server.Kill();
            if (kill % 10 == 0) await IsKeptAsync(file, talkers);
        }

        int turns = await IsKeptAsync(file, talkers);
        Assert.Empty(talkers.Odd);
        output.WriteLine($"{talkers.Acknowledged.Count} turns acknowledged, {turns} kept with openings, {talkers.Again} sent again, longest wait {talkers.LongestWait.TotalSeconds:0.0} s");
    }

    private static async Task<int> IsKeptAsync(string file, Talkers talkers)
    {
        var acknowledged = talkers.Acknowledged.ToArray();
        await using var store = SqliteCaseStore.Open(file, TimeProvider.System);
        return await Kept.CheckAsync(store, acknowledged);
    }
}
