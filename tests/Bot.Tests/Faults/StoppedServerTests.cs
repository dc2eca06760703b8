using DxAssistant.Bot.Tests.Cases;
using DxAssistant.Bot.Tests.Load;
using DxAssistant.Cases.Sqlite;
using Xunit.Abstractions;

namespace DxAssistant.Bot.Tests.Faults;

/// <summary>
/// The program is asked to end while people talk to it, once and more than once, as an impatient supervisor does.
/// </summary>
public sealed class StoppedServerTests(ITestOutputHelper output)
{
    private const int People = 6;

    [Fact]
    public async Task End_AskedOnceOrMore_EndsWellAndEveryAcknowledgedTurnIsThere()
    {
        using var folder = new TemporaryFolder();
        string file = folder.File("cases.db");
        Uri[] there = [];
        await using var talkers = Talkers.With(People, FaultSize.Seed, () => there);
        talkers.Begin(People);
        foreach (var (signal, times) in new[] { ("TERM", 1), ("TERM", 2), ("INT", 2) })
        {
            // Who runs the tests in the background may ignore INT, and would hand that on.
            await using var server = await ServerProcess.StartByAsync(["env", "--default-signal=INT"], "--data", file);
            there = [server.Address];
            await talkers.AnsweredAsync(10);
            Assert.Equal((signal, times, 0), (signal, times, await server.EndAsync(signal, times)));
            Assert.Equal("", server.Said.Trim());
            there = [];
        }

        await talkers.EndAsync();
        await using var store = SqliteCaseStore.Open(file, TimeProvider.System);
        int turns = await Kept.CheckAsync(store, talkers.Acknowledged);
        Assert.Empty(talkers.Odd);
        output.WriteLine(
            $"{talkers.Acknowledged.Count} turns acknowledged, {turns} kept with openings, {talkers.Again} sent again");
    }
}
