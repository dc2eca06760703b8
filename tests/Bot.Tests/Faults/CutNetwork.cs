using DxAssistant.Bot.Tests.Cases;
using DxAssistant.Bot.Tests.Cases.Postgres;
using DxAssistant.Bot.Tests.Load;
using Npgsql;

namespace DxAssistant.Bot.Tests.Faults;

/// <summary>
/// Two programs on one database; the network between them and it is cut, without a word or by closing, and comes back.
/// </summary>
internal sealed class CutNetwork(PostgresServer database, int seed)
{
    private const int People = 4;
    private const int Walks = 16;
    private const int Between = 15;

    // So many turns not answered: the cut was felt by everybody.
    private const int Felt = People;

    private readonly string place = database.NewPlace();

    /// <summary>On a database of its own.</summary>
    public static Task<FaultFigures> RunAsync(int cuts, int seed) =>
        PostgresServer.UseAsync(database => new CutNetwork(database, seed).RunAsync(cuts));

    /// <param name="cuts">How often it is cut of each kind.</param>
    private async Task<FaultFigures> RunAsync(int cuts)
    {
        using var folder = new TemporaryFolder();
        await using var relay = new Relay(new NpgsqlConnectionStringBuilder(place).Port);
        string through = new NpgsqlConnectionStringBuilder(place) { Port = relay.Port }.ToString();
        await using var one = await ServerProcess.StartOnAsync(through, folder.File("one.db"));
        await using var other = await ServerProcess.StartOnAsync(through, folder.File("other.db"));
        Uri[] there = [one.Address, other.Address];
        await using var talkers = Talkers.With(Walks, seed, () => there);
        talkers.Begin(People);
        for (int cut = 0; cut < cuts; cut++)
        {
            await CutAsync(talkers, relay.Hold, relay);
            await CutAsync(talkers, relay.Close, relay);
        }

        await talkers.EndAsync();
        Assert.True(talkers.Odd.IsEmpty, string.Join('\n', talkers.Odd.Distinct()) + one.Said + other.Said);
        return FaultFigures.Of(2 * cuts, talkers, await Kept.CheckAsync(place, talkers));
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
}
