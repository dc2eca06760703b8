using System.Collections.Immutable;
using System.Text;
using DxAssistant.Bot.Tests.Cases;
using DxAssistant.Bot.Tests.Server.Commands;
using DxAssistant.Cases;
using DxAssistant.Cases.Sqlite;
using DxAssistant.Conversation.Events;
using Microsoft.Data.Sqlite;

namespace DxAssistant.Bot.Tests.Faults;

/// <summary>A file of cases of which a page is no longer what was written, as after a fault of the disk.</summary>
public sealed class DamagedFileTests : IAsyncLifetime, IDisposable
{
    private const int PageSize = 4096;
    private const int Cases = 24;

    private readonly TemporaryFolder folder = new();
    private readonly Dictionary<string, ImmutableArray<StoredEvent>> whole = new(StringComparer.Ordinal);

    private string Sound => folder.File("cases.db");

    public async Task InitializeAsync()
    {
        await using var store = SqliteCaseStore.Open(Sound, TimeProvider.System);
        for (int number = 0; number < Cases; number++)
            await TalkAsync(store, FormattableString.Invariant($"case{number}"));
    }

    public Task DisposeAsync() => Task.CompletedTask;

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task ReadAndAppend_AnyPageDamaged_GivesTheLogAsItWasOrSaysWhatToDo()
    {
        var random = new Random(FaultSize.Seed);
        long pages = new FileInfo(Sound).Length / PageSize;
        int refused = 0;
        for (long page = 0; page < pages; page++) refused += await TryAsync(Damage(page, random), page);
        Assert.InRange(refused, 1, int.MaxValue);
    }

    // As the runbook has it: what is damaged is named, the backup put in place, and what came after it taken over case
    // by case.
    [Fact]
    public async Task Restore_ThenImportWhatStillReads_IsAllButTheDamagedCase()
    {
        Assert.Equal(0, (await RunAsync(Sound, "backup", folder.File("backup.db"))).Code);
        await using (var store = SqliteCaseStore.Open(Sound, TimeProvider.System)) await TalkAsync(store, "later");
        string damaged = Damage(PageOf("case3"), new Random(FaultSize.Seed));

        var refused = await RunAsync(damaged, "backup", folder.File("copy.db"));
        Assert.Equal(2, refused.Code);
        Assert.Contains("is damaged", refused.Error, StringComparison.Ordinal);
        var named = await RunAsync(damaged, "verify");
        Assert.Equal(1, named.Code);
        Assert.Contains("case case3 cannot be read: the file is damaged", named.Output, StringComparison.Ordinal);

        Assert.Equal(0, (await RunAsync(folder.File("new.db"), "restore", folder.File("backup.db"))).Code);
        Assert.Equal(0, (await RunAsync(damaged, "export", "later", folder.File("later.json"))).Code);
        Assert.Equal(0, (await RunAsync(folder.File("new.db"), "import", folder.File("later.json"))).Code);
        Assert.Contains($"{Cases + 1} looked at, 0 not as recorded",
            (await RunAsync(folder.File("new.db"), "verify")).Output, StringComparison.Ordinal);
    }

    private async Task TalkAsync(SqliteCaseStore store, string caseId)
    {
        for (int turn = 0; turn < 4; turn++)
            await store.AppendAsync(caseId, 2 * turn, $"t{turn}",
                [new CodeReported($"b{turn}", caseId), new NoteWritten("ann", new string((char)('a' + turn), 300))]);
        whole[caseId] = await store.ReadAsync(caseId);
    }

    /// <returns>How often something was refused.</returns>
    private async Task<int> TryAsync(string file, long page)
    {
        int refused = 0;
        try
        {
            await using var store = SqliteCaseStore.Open(file, TimeProvider.System);
            foreach (var (caseId, log) in whole) refused += await RefusedAsync(
                async () => IsTheSame(log, await store.ReadAsync(caseId), page), page);
            refused += await RefusedAsync(async () =>
            {
                Assert.IsType<AppendResult.Appended>(
                    await store.AppendAsync("new", 0, "t", [new CodeReported("b9", null)]));
                Assert.Single(await store.ReadAsync("new"));
            }, page);
        }
        catch (CaseFileException error)
        {
            IsClear(error, page);
            refused++;
        }

        return refused;
    }

    private static async Task<int> RefusedAsync(Func<Task> work, long page)
    {
        try
        {
            await work();
            return 0;
        }
        catch (CaseFileException error)
        {
            IsClear(error, page);
            return 1;
        }
    }

    private static void IsTheSame(ImmutableArray<StoredEvent> log, ImmutableArray<StoredEvent> read, long page) =>
        Assert.Equal($"page {page}\n{string.Join('\n', log)}", $"page {page}\n{string.Join('\n', read)}");

    private static void IsClear(CaseFileException error, long page) =>
        Assert.True(error.Message.Contains("backup", StringComparison.Ordinal), $"page {page}: {error.Message}");

    private string Damage(long page, Random random)
    {
        string file = folder.File(FormattableString.Invariant($"damaged{page}.db"));
        File.Copy(Sound, file, overwrite: true);
        byte[] wrong = new byte[PageSize];
        random.NextBytes(wrong);
        using var bytes = File.OpenWrite(file);
        bytes.Position = page * PageSize;
        bytes.Write(wrong);
        return file;
    }

    // Where the first entry of a case lies: nothing but that row holds its hash.
    private long PageOf(string caseId)
    {
        using var open = new SqliteConnection($"Data Source={Sound};Pooling=False");
        open.Open();
        using var command = open.CreateCommand();
        command.CommandText = "PRAGMA wal_checkpoint(TRUNCATE)";
        command.ExecuteNonQuery();
        return File.ReadAllBytes(Sound).AsSpan().IndexOf(Encoding.UTF8.GetBytes(whole[caseId][0].Hash)) / PageSize;
    }

    private static Task<Run> RunAsync(string file, params string[] arguments) =>
        Run.OfAsync("", ["cases", .. arguments, "--data", file]);
}
