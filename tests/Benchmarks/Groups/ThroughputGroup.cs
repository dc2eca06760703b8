using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using DxAssistant.Benchmarks.Live;
using DxAssistant.Benchmarks.Load;
using DxAssistant.Bot.Tests.Load;
using DxAssistant.Conversation;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Tests.Content;

namespace DxAssistant.Benchmarks.Groups;

/// <summary>
/// Whole conversations over HTTP against the program itself, beside a bare server that only keeps the same events.
/// </summary>
/// <remarks><c>DX_SECONDS</c>, <c>DX_PAIRS</c>, <c>DX_WALKS</c> and <c>DX_SEED</c> change the size of a run.</remarks>
internal sealed class ThroughputGroup : IBenchmarkGroup
{
    private const int Many = 1_000;
    private const int InMemory = 200;

    // Enough for the program to have compiled what is used often, and to have met what comes up most.
    private const int HadBefore = 200;

    // A thousand people have these, most of them no further than their first steps.
    private const int OfMany = 300;

    private static readonly TimeSpan Thinks = TimeSpan.FromSeconds(10);

    private readonly int seconds = Given("DX_SECONDS", 8);
    private readonly int pairs = Given("DX_PAIRS", 2);
    private readonly int seed = Given("DX_SEED", 20261126);

    public string Name => "throughput";

    public void Run(ResultFolder results) => RunAsync(results).GetAwaiter().GetResult();

    private async Task RunAsync(ResultFolder results)
    {
        string begun = Machine.Conditions();
        var library = ContentCompiler.Compile(RepositoryFolder.Read("content")).Library!;
        int each = Given("DX_WALKS", 80);
        var walks = new WalkShelf(new Assistant(library), results).Take(HadBefore + (2 * pairs * each) + OfMany, seed);
        string rows = await RowsAsync(new Queue<ImmutableArray<RecordedTurn>>(walks), each);
        results.Keep("throughput.md", FormattableString.Invariant($$"""
            # Turns a second, and what a case takes

            Conversations with hidden faults of the shipped content, each complaint as often as the pages say that it comes up, readings with the
            noise of a meter, seed {{seed}}: {{walks.Length}} of {{walks.Sum(walk => walk.Length)}} turns. They are sent over HTTP to the program in a process of its own: SQLite,
            synchronous FULL, group commit, accounts off. The bare server is another process of the same run: one address of the same web
            server that appends the events of the same turns with the same group commit, and does nothing else.

            At first {{HadBefore}} conversations are had that are not counted. Then pairs of {{seconds}} s in turn, {{pairs}} of them, medians. *New* conversations were
            never had before; *again* are the same word for word, as if all had been had. Without a pace each person sends the next
            turn as soon as the last is answered, so that all processors are always busy and times are those of a queue. With {{Many}}
            open cases each person thinks for {{Thinks.TotalSeconds}} s on average. Who sends runs on the same processors.

            | open cases | conversations | server | turns/s | half within, ms | 99 % within, ms | slowest, ms | processor, ms a turn |
            |---:|---|---|---:|---:|---:|---:|---:|
            {{rows}}
            The bars: half the turns a second of the bare server, and with {{Many}} open cases at most three times its 99 %. What a turn does beyond
            keeping its events, stage by stage: [stages.md](stages.md). Most of it is plans: of new conversations two turns in five need one that
            nobody needed before, at 4 to 5 ms; of those had before none.

            ## Live memory of a case that is talked at
            {{await new OpenCases(library, walks).MeasureAsync(InMemory)}}

            Cases that nobody talks at: [stored.md](stored.md).

            `DX_PAIRS={{pairs}} DX_SECONDS={{seconds}} dotnet run -c Release --project tests/Benchmarks -- throughput` writes this page; `DX_WALKS` ({{each}} new
            conversations a pair) and `DX_SEED` change the rest. {{begun}} At the end: {{Machine.Load()}}.

            """));
    }

    private async Task<string> RowsAsync(Queue<ImmutableArray<RecordedTurn>> walks, int each)
    {
        var folder = Directory.CreateTempSubdirectory("dx-load-");
        await using var ours =
            new AssistantTarget(await ServerProcess.StartAsync("--data", Path.Combine(folder.FullName, "cases.db")));
        await using var bare = new BareTarget(await ServerProcess.StartAsync(
            [typeof(ThroughputGroup).Assembly.Location, BareAppender.Command, Path.Combine(folder.FullName, "bare.db")],
            "Open "));
        var before = Next(walks, HadBefore);
        foreach (ILoadTarget target in new ILoadTarget[] { ours, bare })
            await LoadRun.HaveAsync(target, before, people: 8);
        var rows = new StringBuilder();
        foreach (int people in new[] { 1, 32 })
        {
            ImmutableArray<ImmutableArray<RecordedTurn>>[] sets =
                [.. Enumerable.Range(0, pairs).Select(_ => Next(walks, each))];
            rows.Append(await PairsAsync(ours, bare, people, TimeSpan.Zero, "new", sets));
            rows.Append(await PairsAsync(ours, bare, people, TimeSpan.Zero, "again", sets));
        }

        return rows.Append(await PairsAsync(ours, bare, Many, Thinks, "new", [Next(walks, OfMany)])).ToString();
    }

    private async Task<string> PairsAsync(
        ILoadTarget ours, ILoadTarget bare, int people, TimeSpan pace, string what,
        ImmutableArray<ImmutableArray<RecordedTurn>>[] sets)
    {
        List<Stretch> oursAll = [], bareAll = [];
        foreach (var set in sets)
        {
            var run = new LoadRun(set, people, pace, seed);
            oursAll.Add(await run.RunAsync(ours, TimeSpan.FromSeconds(seconds)));
            bareAll.Add(await run.RunAsync(bare, TimeSpan.FromSeconds(seconds)) with { Again = 0 });
        }

        var (mine, its) = (Stretch.Median(oursAll), Stretch.Median(bareAll));
        return FormattableString.Invariant(
            $"| {people} | {what} | program | {mine} |\n| {people} | {what} | bare | {its} |\n| {people} | {what} | ratio | {mine.Against(its)} |\n");
    }

    private static ImmutableArray<ImmutableArray<RecordedTurn>> Next(Queue<ImmutableArray<RecordedTurn>> walks,
        int count) =>
        [.. Enumerable.Range(0, count).Select(_ => walks.Dequeue())];

    private static int Given(string name, int usual) =>
        int.TryParse(Environment.GetEnvironmentVariable(name), NumberStyles.None, CultureInfo.InvariantCulture,
            out int value) ? value : usual;
}
