using DxAssistant.Cases;
using DxAssistant.Cases.Sqlite;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using Microsoft.Data.Sqlite;

namespace DxAssistant.Bot.Tests.Cases;

public sealed class SqliteCaseStoreTests : LastingCaseStoreTests, IDisposable
{
    private readonly TemporaryFolder folder = new();

    protected override Task<ICaseStore> MakeAsync(TimeProvider clock) =>
        Task.FromResult<ICaseStore>(SqliteCaseStore.Open(folder.File("cases.db"), clock));

    protected override Task AlterAsync(string sql)
    {
        Run(folder.File("cases.db"), sql);
        return Task.CompletedTask;
    }

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task Open_FileThatHasCases_ReadsThem()
    {
        string file = folder.File("again.db");
        await using (var first = SqliteCaseStore.Open(file, TimeProvider.System))
        {
            await first.AppendAsync("a", 0, "t", Events("b4"));
        }

        await using var second = SqliteCaseStore.Open(file, TimeProvider.System);

        Assert.Single(await second.ReadAsync("a"));
        Assert.IsType<AppendResult.Appended>(await second.AppendAsync("a", 1, "t2", Events("b5")));
    }

    [Fact]
    public async Task AppendAsync_TwoProgramsOnOneFile_OneOfThemSeesTheConflict()
    {
        string file = folder.File("two.db");
        await using var one = SqliteCaseStore.Open(file, TimeProvider.System);
        await using var other = SqliteCaseStore.Open(file, TimeProvider.System);

        var results = await Task.WhenAll(
            one.AppendAsync("a", 0, "t1", Events("b4")), other.AppendAsync("a", 0, "t2", Events("b5")));

        Assert.Single(results.OfType<AppendResult.Appended>());
        Assert.Single(results.OfType<AppendResult.Conflict>());
        Assert.Equal<StoredEvent>(await one.ReadAsync("a"), await other.ReadAsync("a"));
    }

    [Fact]
    public async Task Open_NewFile_UsesAWriteAheadLog()
    {
        string file = folder.File("modes.db");
        await using var store = SqliteCaseStore.Open(file, TimeProvider.System);
        using var look = new SqliteConnection($"Data Source={file};Pooling=False");
        look.Open();
        using var command = look.CreateCommand();
        command.CommandText = "PRAGMA journal_mode";

        Assert.Equal("wal", command.ExecuteScalar());
    }

    // Whoever copies the file of a program that has ended has all of it.
    [Fact]
    public async Task DisposeAsync_AfterReading_LeavesOneFile()
    {
        string file = folder.File("whole.db");
        await using (var store = SqliteCaseStore.Open(file, TimeProvider.System))
        {
            await store.AppendAsync("a", 0, "t", Events("b4"));
            Assert.Single(await store.ReadAsync("a"));
            Assert.Equal(1, (await store.MarkAsync("a")).Last);
        }

        Assert.Equal([file], Directory.GetFiles(folder.Path, "whole.db*"));
    }

    [Fact]
    public void Open_FileOfALaterVersion_SaysSoAndLeavesItAlone()
    {
        string file = folder.File("later.db");
        Run(file, "CREATE TABLE schema_version (version INTEGER NOT NULL); INSERT INTO schema_version VALUES (999)");

        var error = Assert.Throws<CaseFileException>(() => SqliteCaseStore.Open(file, TimeProvider.System));

        Assert.Contains("version 999", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Open_FileThatIsNoDatabase_SaysWhatToDo()
    {
        string file = folder.File("letter.txt");
        File.WriteAllText(file, string.Concat(Enumerable.Repeat("Dear customer, ", 200)));

        var error = Assert.Throws<CaseFileException>(() => SqliteCaseStore.Open(file, TimeProvider.System));

        Assert.Contains("--data", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task ReadAsync_EntryOfAnotherKind_SaysWhichOne()
    {
        string file = folder.File("strange.db");
        await using var store = SqliteCaseStore.Open(file, TimeProvider.System);
        await store.AppendAsync("a", 0, "t", Events("b4"));
        Run(file, """UPDATE event SET body = '{"event":"from-the-future"}'""");

        var error = await Assert.ThrowsAsync<CaseFileException>(() => store.ReadAsync("a"));

        Assert.Contains("entry 1 of case a", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task AppendAsync_TableIsGone_FailsAndAcknowledgesNothing()
    {
        string file = folder.File("broken.db");
        await using var store = SqliteCaseStore.Open(file, TimeProvider.System);
        await store.AppendAsync("a", 0, "t", Events("b4"));
        Run(file, "DROP TABLE job");

        await Assert.ThrowsAsync<CaseFileException>(() => store.AppendAsync("a", 1, "t2", Events("b5")));

        Assert.Single(await store.ReadAsync("a"));
    }

    [Theory]
    [InlineData("UPDATE event SET body = x'00'")]
    [InlineData("UPDATE event SET at = 9000000000000000000")]
    public async Task ReadAsync_EntryOfAnotherForm_SaysWhichOne(string change)
    {
        string file = folder.File("odd.db");
        await using var store = SqliteCaseStore.Open(file, TimeProvider.System);
        await store.AppendAsync("a", 0, "t", Events("b4"));
        Run(file, change);

        await Assert.ThrowsAsync<CaseFileException>(() => store.ReadAsync("a"));
    }

    [Fact]
    public async Task ReadAsync_TablesAreGone_IsAFaultOfTheFile()
    {
        string file = folder.File("emptied.db");
        await using var store = SqliteCaseStore.Open(file, TimeProvider.System);
        Run(file, "DROP TABLE event; DROP TABLE job");

        await Assert.ThrowsAsync<CaseFileException>(() => store.ReadAsync("a"));
        await Assert.ThrowsAsync<CaseFileException>(() => store.ListAsync(10));
    }

    [Fact]
    public async Task AppendAsync_OneRetriedTurnCannotBeReadBack_TheOthersAreSaved()
    {
        string file = folder.File("batch.db");
        await using var store = SqliteCaseStore.Open(file, TimeProvider.System);
        await store.AppendAsync("spoiled", 0, "t", Events("b4"));
        Run(file, """UPDATE event SET body = '{"event":"from-the-future"}'""");

        // While another program holds the file, the turns gather into one transaction.
        using var other = new SqliteConnection($"Data Source={file};Pooling=False");
        other.Open();
        await using var hold = other.BeginTransaction(deferred: false);
        var first = store.AppendAsync("first", 0, "t", Events("b4"));
        var retry = store.AppendAsync("spoiled", 0, "t", Events("b4"));
        var sound = Enumerable.Range(0, 5).Select(i => store.AppendAsync($"sound-{i}", 0, "t", Events("b5"))).ToList();
        await hold.RollbackAsync();

        await Assert.ThrowsAsync<CaseFileException>(() => retry);
        Assert.All(await Task.WhenAll([first, .. sound]), end => Assert.IsType<AppendResult.Appended>(end));
    }

    [Fact]
    public async Task Open_FileOfTheFirstVersion_KeepsItsCasesAndSealsThem()
    {
        string file = folder.File("old.db");
        Run(file, FirstVersion);

        await using var store = SqliteCaseStore.Open(file, TimeProvider.System);
        var log = await store.ReadAsync("a");

        Assert.Equal(new Said("t", "technician", new MessageBody.Words("fan dead")), log[0].Event);
        Assert.Equal(64, log[1].Hash.Length);
        Assert.Equal(2, await store.BlankAsync("a"));
        Assert.IsType<AppendResult.Appended>(await store.AppendAsync("a", 2, "t2", Events("b5")));
        Assert.Equal(3, (await store.ReadAsync("a")).Length);
    }

    // As the first version of the program wrote it.
    private const string FirstVersion = """
        CREATE TABLE schema_version (version INTEGER NOT NULL);
        CREATE TABLE job (
            id TEXT PRIMARY KEY, title TEXT, opened_at INTEGER NOT NULL, last_at INTEGER NOT NULL, last_event INTEGER NOT NULL);
        CREATE INDEX job_by_last_event ON job (last_event DESC);
        CREATE TABLE turn (
            case_id TEXT NOT NULL, turn_id TEXT NOT NULL, first INTEGER NOT NULL, last INTEGER NOT NULL,
            UNIQUE (case_id, turn_id));
        CREATE TABLE event (
            number INTEGER PRIMARY KEY, case_id TEXT NOT NULL, sequence INTEGER NOT NULL,
            turn_id TEXT NOT NULL, at INTEGER NOT NULL, body TEXT NOT NULL,
            UNIQUE (case_id, sequence));
        INSERT INTO schema_version VALUES (1);
        INSERT INTO job VALUES ('a', 'fan dead', 1000, 1000, 2);
        INSERT INTO turn VALUES ('a', 't', 1, 2);
        INSERT INTO event VALUES (1, 'a', 1, 't', 1000,
            '{"event":"said","turnId":"t","by":"technician","body":{"form":"words","text":"fan dead"}}');
        INSERT INTO event VALUES (2, 'a', 2, 't', 1000,
            '{"event":"symptom-reported","symptom":"fan","confidence":1,"words":"fan dead","comesAndGoes":false}');
        """;

    private static void Run(string file, string sql)
    {
        using var connection = new SqliteConnection($"Data Source={file};Pooling=False");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        command.ExecuteNonQuery();
    }
}
