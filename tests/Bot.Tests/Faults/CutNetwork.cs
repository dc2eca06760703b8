using DxAssistant.Bot.Tests.Cases;
using DxAssistant.Bot.Tests.Cases.Postgres;
using DxAssistant.Bot.Tests.Conversation;
using DxAssistant.Bot.Tests.Load;
using DxAssistant.Cases.Claims;
using DxAssistant.Cases.Postgres;
using Npgsql;

namespace DxAssistant.Bot.Tests.Faults;

/// <summary>Two programs on one database; the network between them and it is cut, without a word or by closing, and comes back.</summary>
internal sealed class CutNetwork(PostgresServer database, int seed)
{
    private const int People = 4;
    private const int Walks = 16;
    private const int Between = 15;

    // So many turns not answered: the cut was felt by everybody.
    private const int Felt = People;

    private readonly string place = database.NewPlace();

    /// <summary>On a database of its own.</summary>
    public static async Task<FaultFigures> RunAsync(int cuts, int seed)
    {
        var database = new PostgresServer();
        await database.InitializeAsync();
        try
        {
            return await new CutNetwork(database, seed).RunAsync(cuts);
        }
        finally
        {
            await database.DisposeAsync();
        }
    }

    /// <param name="cuts">How often it is cut of each kind.</param>
    private async Task<FaultFigures> RunAsync(int cuts)
    {
        using var folder = new TemporaryFolder();
        await using var relay = new Relay(new NpgsqlConnectionStringBuilder(place).Port);
        string through = new NpgsqlConnectionStringBuilder(place) { Port = relay.Port }.ToString();
        await using var one = await ServerProcess.StartAsync("--store", through, "--data", folder.File("one.db"));
        await using var other = await ServerProcess.StartAsync("--store", through, "--data", folder.File("other.db"));
        Uri[] there = [one.Address, other.Address];
        await using var talkers = new Talkers(new WalkRecorder(ShippedContent.Assistant).Record(Walks, seed), () => there);
        talkers.Begin(People);
        for (int cut = 0; cut < cuts; cut++)
        {
            await CutAsync(talkers, relay.Hold, relay);
            await CutAsync(talkers, relay.Close, relay);
        }

        await talkers.EndAsync();
        Assert.True(talkers.Odd.IsEmpty, string.Join('\n', talkers.Odd.Distinct()) + one.Said + other.Said);
        return FaultFigures.Of(2 * cuts, talkers, await IsKeptAsync(talkers));
    }

    // Nobody does anything to a program: that it goes on afterwards is its own work.
    private static async Task CutAsync(Talkers talkers, Action cut, Relay relay)
    {
        await talkers.AnsweredAsync(Between);
        cut();
        int before = talkers.Again;
        while (talkers.Again < before + Felt) await Task.Delay(50);
        relay.GoOn();
        await talkers.AnsweredAsync(Between);
    }

    private async Task<int> IsKeptAsync(Talkers talkers)
    {
        await using var claims = SqlClaimStore.Open(new NpgsqlConnection(place));
        await Kept.CheckAsync(claims, talkers.Claims);
        await using var store = await PostgresCaseStore.OpenAsync(place, TimeProvider.System);
        return await Kept.CheckAsync(store, talkers.Acknowledged);
    }
}
