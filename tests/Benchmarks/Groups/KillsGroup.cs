using DxAssistant.Benchmarks.Live;
using DxAssistant.Bot.Tests.Cases.Postgres;
using DxAssistant.Bot.Tests.Faults;

namespace DxAssistant.Benchmarks.Groups;

/// <summary>Harm done to the program while people talk to it, many times; what was promised and kept.</summary>
/// <remarks>
/// <c>DX_KILLS</c> says how often, <c>DX_COPIES</c> how often the files are copied where that differs, <c>DX_SEED</c>
/// draws other moments. It ends at the first promise that was broken.
/// </remarks>
internal sealed class KillsGroup : IBenchmarkGroup
{
    public string Name => "kills";

    public void Run(ResultFolder results) => RunAsync(results).GetAwaiter().GetResult();

    private static async Task RunAsync(ResultFolder results)
    {
        int kills = Environment.GetEnvironmentVariable("DX_KILLS") is null ? 100 : FaultSize.Kills;
        int copies = FaultSize.CopiesOr(kills);
        string begun = Machine.Conditions();
        var killed = await KilledServer.RunAsync(kills, FaultSize.Seed);
        var lost = await LostPower.RunAsync(copies, FaultSize.Seed);
        var many = PostgresServer.IsThere ? await ManyServers.RunAsync(Math.Max(1, kills / 10), FaultSize.Seed) : null;
        var cut = PostgresServer.IsThere ? await CutNetwork.RunAsync(Math.Max(1, kills / 20), FaultSize.Seed) : null;
        results.Keep("kills.md", FormattableString.Invariant($"""
            # What is kept when the program is harmed

            Six people have recorded conversations with hidden faults over HTTP and begin a claim at the end of each; whoever is not answered
            sends the same turn again. Afterwards every log is read and checked: each turn that was answered is there, once and whole, each
            hash of each log and claim fits. The run ends with an error at the first that is not: that this page is there says that none
            was lost. Seed {FaultSize.Seed}.

            | harm | times | turns answered | lost or doubled | claims answered | lost or altered | turns kept, with openings | sent again | longest wait, s |
            |---|---:|---:|---:|---:|---:|---:|---:|---:|
            {Row("kill -9 of the program at a random moment, SQLite", killed)}
            {Row("its files copied at a random moment while it stands still", lost.Whole)}
            {(many is null ? "" : Row("three programs on PostgreSQL: kill -9 of one, then of the database", many.Faults))}
            {(cut is null ? "" : Row("two programs on PostgreSQL: the network to it held up without a word, then closed", cut))}

            In the second row people wait until the copies are read. Kept over all copies of that row; once more with the journal cut off or overwritten behind what had been carried over, at a
            random place: {lost.Torn} turns, all whole, every log readable. {(many is null ? "There was no PostgreSQL." : many.Heard)}

            `DX_KILLS={kills} DX_COPIES={copies} dotnet run -c Release --project tests/Benchmarks -- kills` writes this page. {begun} At the end: {Machine.Load()}.

            """));
    }

    private static string Row(string harm, FaultFigures it) => FormattableString.Invariant(
        $"| {harm} | {it.Faults} | {it.Acknowledged} | 0 | {it.Claims} | 0 | {it.Kept} | {it.Again} | {it.LongestWait.TotalSeconds:0.0} |");
}
