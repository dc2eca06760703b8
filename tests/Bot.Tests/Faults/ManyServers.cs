using System.Diagnostics;
using DxAssistant.Bot.Tests.Cases;
using DxAssistant.Bot.Tests.Cases.Postgres;
using DxAssistant.Bot.Tests.Load;
using Npgsql;

namespace DxAssistant.Bot.Tests.Faults;

/// <summary>
/// Three programs on one database, any of which may be asked for any turn of any case: one is killed, then the
/// database.
/// </summary>
internal sealed class ManyServers(PostgresServer database, int seed)
{
    private const int People = 6;
    private const int Walks = 24;
    private const int Servers = 3;
    private const int Between = 15;

    private readonly string place = database.NewPlace();
    private readonly List<ServerProcess> servers = [];

    /// <summary>On a database of its own.</summary>
    public static Task<ManyServersFigures> RunAsync(int kills, int seed) =>
        PostgresServer.UseAsync(database => new ManyServers(database, seed).RunAsync(kills));

    private async Task<ManyServersFigures> RunAsync(int kills)
    {
        using var folder = new TemporaryFolder();
        try
        {
            for (int number = 0; number < Servers; number++) servers.Add(await StartAsync(folder, number));
            var heard = await HearsAsync(servers[0].Address, servers[1].Address);
            var before = await KillAsync(folder, kills);
            return new ManyServersFigures(before, heard, await HearsAsync(servers[2].Address, servers[0].Address));
        }
        finally
        {
            foreach (var server in servers) await server.DisposeAsync();
        }
    }

    private async Task<FaultFigures> KillAsync(TemporaryFolder folder, int kills)
    {
        var random = new Random(seed);
        Uri[] there = [.. servers.Select(server => server.Address)];
        await using var talkers = Talkers.With(Walks, seed, () => there);
        talkers.Begin(People);
        for (int kill = 0; kill < kills; kill++)
        {
            int killed = random.Next(Servers);
            await talkers.AnsweredAsync(Between);
            servers[killed].Kill();
            await talkers.AnsweredAsync(Between);
            database.Restart();
            await talkers.AnsweredAsync(Between);
            servers[killed] = await StartAsync(folder, killed);
            there = [.. servers.Select(server => server.Address)];
        }

        await talkers.EndAsync();
        Assert.Empty(talkers.Odd);
        return FaultFigures.Of(kills, talkers, await Kept.CheckAsync(place, talkers));
    }

    private Task<ServerProcess> StartAsync(TemporaryFolder folder, int number) =>
        ServerProcess.StartOnAsync(place, folder.File(FormattableString.Invariant($"pages{number}.db")));

    // What is said at one program is heard at another, and stands in its list.
    private static async Task<TimeSpan> HearsAsync(Uri one, Uri other)
    {
        using var here = new CaseClient(one);
        using var elsewhere = new CaseClient(other);
        string caseId = await here.OpenAsync();
        using var changes = new StreamReader(await elsewhere.ListenAsync(caseId));
        string? first = await changes.ReadLineAsync();
        Assert.StartsWith("id: ", first, StringComparison.Ordinal);
        await here.PostAsync($"/api/cases/{caseId}/turns", """{"turnId":"t1","text":"the fan is loud"}""");
        long said = Stopwatch.GetTimestamp();
        string? line;
        do line = await changes.ReadLineAsync();
        while (line is not null && (!line.StartsWith("id: ", StringComparison.Ordinal) || line == first));
        Assert.NotNull(line);
        var heard = Stopwatch.GetElapsedTime(said);
        Assert.Contains(caseId, System.Text.Encoding.UTF8.GetString(await elsewhere.GetAsync("/api/work")),
            StringComparison.Ordinal);
        return heard;
    }
}
