using System.Collections.Immutable;
using System.Diagnostics;
using DxAssistant.Bot.Tests.Cases;
using DxAssistant.Bot.Tests.Load;
using DxAssistant.Cases.Sqlite;

namespace DxAssistant.Bot.Tests.Faults;

/// <summary>
/// One program in a process of its own, talked to for long: what it takes should not grow with what it has done.
/// </summary>
/// <param name="people">How many talk at a time.</param>
/// <param name="pace">How long each thinks after an answer.</param>
/// <param name="tell">Is told of each look at once, so that a run which ends with an error leaves its figures.</param>
internal sealed class Soak(int people, TimeSpan pace, int seed, Action<SoakSample> tell)
{
    // More conversations than can be kept in mind with all their readings.
    private const int Walks = 60;

    /// <summary>Talks so long and looks so often.</summary>
    public async Task<ImmutableArray<SoakSample>> RunAsync(TimeSpan whole, int looks)
    {
        using var folder = new TemporaryFolder();
        string file = folder.File("cases.db");
        await using var server = await ServerProcess.StartAsync("--data", file);
        await using var talkers = Talkers.With(Walks, seed, () => [server.Address], pace);
        talkers.Begin(people);
        var samples = ImmutableArray.CreateBuilder<SoakSample>(looks);
        long begun = Stopwatch.GetTimestamp();
        while (samples.Count < looks)
        {
            await Task.Delay(whole / looks);
            samples.Add(Look(server, Stopwatch.GetElapsedTime(begun), talkers.TakeWaits()));
            tell(samples[^1]);
        }

        await talkers.EndAsync();
        Assert.Empty(talkers.Odd);
        Assert.Equal(0, talkers.Again);
        Assert.Equal(0, await server.EndAsync());
        await using var store = SqliteCaseStore.Open(file, TimeProvider.System);
        await Kept.CheckAsync(store, talkers.Acknowledged);
        return samples.MoveToImmutable();
    }

    private static SoakSample Look(ServerProcess server, TimeSpan at, List<TimeSpan> waits)
    {
        double[] sorted = [.. waits.Select(wait => wait.TotalMilliseconds).Order()];
        double At(double share) =>
            sorted.Length == 0 ? double.NaN : sorted[Math.Min(sorted.Length - 1, (int)(share * sorted.Length))];
        return new SoakSample(at, sorted.Length, At(0.5), At(0.99), server.ResidentBytes / 1e6, server.Handles,
            server.Threads);
    }
}
