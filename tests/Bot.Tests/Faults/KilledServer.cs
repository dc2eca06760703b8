using DxAssistant.Bot.Tests.Cases;
using DxAssistant.Bot.Tests.Load;
using DxAssistant.Cases.Claims;
using DxAssistant.Cases.Sqlite;

namespace DxAssistant.Bot.Tests.Faults;

/// <summary>
/// The program itself, in a process of its own, is killed at any moment while people talk to it, and started again.
/// </summary>
internal static class KilledServer
{
    private const int People = 6;
    private const int Walks = 24;

    // Long enough to take some turns, short enough to be killed within them.
    private const int MostMilliseconds = 600;

    // The logs are read after each so many kills, and at the end.
    private const int LookedAtEach = 10;

    public static async Task<FaultFigures> RunAsync(int kills, int seed)
    {
        using var folder = new TemporaryFolder();
        string file = folder.File("cases.db");
        var random = new Random(seed);
        Uri[] there = [];
        await using var talkers = Talkers.With(Walks, seed, () => there);
        talkers.Begin(People);
        for (int kill = 0; kill <= kills; kill++)
        {
            await using var server = await ServerProcess.StartAsync("--data", file);
            there = [server.Address];
            await talkers.AnsweredAsync(2);
            if (kill == kills) await talkers.EndAsync();
            else await Task.Delay(random.Next(MostMilliseconds));
            there = [];
            server.Kill();
            if (kill % LookedAtEach == 0) await IsKeptAsync(file, talkers);
        }

        int turns = await IsKeptAsync(file, talkers);
        Assert.Empty(talkers.Odd);
        return FaultFigures.Of(kills, talkers, turns);
    }

    private static async Task<int> IsKeptAsync(string file, Talkers talkers)
    {
        var (acknowledged, begun) = (talkers.Acknowledged.ToArray(), talkers.Claims.ToArray());
        await using var store = SqliteCaseStore.Open(file, TimeProvider.System);
        await using var claims = SqlClaimStore.Open(file);
        await Kept.CheckAsync(claims, begun);
        return await Kept.CheckAsync(store, acknowledged);
    }
}
