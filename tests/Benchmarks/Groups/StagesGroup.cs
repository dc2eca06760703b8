using System.Globalization;
using DxAssistant.Benchmarks.Live;
using DxAssistant.Benchmarks.Load;
using DxAssistant.Cases.Sqlite;
using DxAssistant.Conversation;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Tests.Content;

namespace DxAssistant.Benchmarks.Groups;

/// <summary>
/// Where the processor time of a turn goes: at first, and once as many conversations were had as a busy hour brings.
/// </summary>
/// <remarks>
/// <c>DX_WALKS</c> changes the number of conversations, <c>DX_ROUNDS</c> how often they are had before.
/// </remarks>
internal sealed class StagesGroup : IBenchmarkGroup
{
    private const int Seed = 20261126;

    private readonly int count = Size("DX_WALKS", 150);

    public string Name => "stages";

    public void Run(ResultFolder results)
    {
        var library = ContentCompiler.Compile(RepositoryFolder.Read("content")).Library!;
        var shelf = new WalkShelf(new Assistant(library), results);
        var (before, now) = (shelf.Take(count, Seed), shelf.Take(count, Seed + 1));
        var folder = Directory.CreateTempSubdirectory("dx-stages-");
        using var store =
            new Closing(SqliteCaseStore.Open(Path.Combine(folder.FullName, "cases.db"), TimeProvider.System));
        var stages = new TurnStages(library, store.Store);
        string cold = stages.Take(before).Rows();
        for (int round = Size("DX_ROUNDS", 2); round > 1; round--) stages.Take(before);
        string warm = stages.Take(now).Rows(), again = stages.Take(now).Rows();
        results.Keep("stages.md", FormattableString.Invariant($"""
            # Where the processor time of a turn goes

            {count} conversations with hidden faults of the shipped content, taken one after another in one process, SQLite with synchronous
            FULL. Processor time of the whole process, the writer of the store and the collector included. Then {count} others, drawn
            anew: other faults, other readings, the same pages; and these once more, word for word.

            ## At first
            {Head}
            {cold}
            ## Other conversations, later
            {Head}
            {warm}
            ## The same once more
            {Head}
            {again}
            `dotnet run -c Release --project tests/Benchmarks -- stages` writes this page. {Machine.Conditions()}

            """));
        folder.Delete(true);
    }

    private const string Head =
        "| stage | times | ms a turn | mean, ms | half within | 99 % within |\n|---|---:|---:|---:|---:|---:|";

    private static int Size(string name, int usual) =>
        int.TryParse(Environment.GetEnvironmentVariable(name), NumberStyles.None, CultureInfo.InvariantCulture,
            out int value) ? value : usual;

    private sealed record Closing(SqliteCaseStore Store) : IDisposable
    {
        public void Dispose() => Store.DisposeAsync().AsTask().GetAwaiter().GetResult();
    }
}
