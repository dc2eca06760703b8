using DxAssistant.Bot.Tests.Cases;
using DxAssistant.Cases;
using DxAssistant.Cases.Sqlite;
using DxAssistant.Conversation.Events;
using Microsoft.Data.Sqlite;

namespace DxAssistant.Bot.Tests.Server.Commands;

/// <summary>The command <c>cases</c> on a file of two cases.</summary>
public sealed class CasesCommandTests : IAsyncLifetime, IDisposable
{
    private readonly TemporaryFolder folder = new();

    private string CasesFile => folder.File("cases.db");

    public async Task InitializeAsync()
    {
        await using var store = SqliteCaseStore.Open(CasesFile, TimeProvider.System);
        await store.AppendAsync("a", 0, "t1", [new SymptomReported("fan", 1, "Ann Ottery says the fan is dead")]);
        await store.AppendAsync("b", 0, "t1", [new CodeReported("b4", null), new CodeReported("b5", null)]);
    }

    public Task DisposeAsync() => Task.CompletedTask;

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task Backup_WhileTheProgramRuns_RestoresToTheSameCases()
    {
        await using (var running = SqliteCaseStore.Open(CasesFile, TimeProvider.System))
        {
            await running.AppendAsync("c", 0, "t1", [new CodeReported("b6", null)]);
            Assert.Equal(0, (await RunAsync(CasesFile, "backup", folder.File("copy.db"))).Code);
        }

        var restored = await RunAsync(folder.File("new.db"), "restore", folder.File("copy.db"));

        Assert.Equal((0, "3 looked at, 0 not as recorded\n"), (restored.Code, restored.Output));
        await using var store = SqliteCaseStore.Open(folder.File("new.db"), TimeProvider.System);
        Assert.Equal(new CodeReported("b6", null), Assert.Single(await store.ReadAsync("c")).Event);
    }

    [Fact]
    public async Task Restore_OverCasesThatAreThere_IsRefused()
    {
        await RunAsync(CasesFile, "backup", folder.File("copy.db"));

        var run = await RunAsync(CasesFile, "restore", folder.File("copy.db"));

        Assert.Equal(2, run.Code);
        Assert.Contains("is there already", run.Error, StringComparison.Ordinal);
    }

    // The file was moved away under a server that goes on writing to its journal.
    [Fact]
    public async Task Restore_BesideAJournalOfAServer_IsRefusedAndLeavesNothing()
    {
        await RunAsync(CasesFile, "backup", folder.File("copy.db"));
        await File.WriteAllTextAsync(folder.File("new.db-wal"), "turns on their way");

        var run = await RunAsync(folder.File("new.db"), "restore", folder.File("copy.db"));

        Assert.Equal(2, run.Code);
        Assert.Contains("a server may still be using it", run.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(folder.File("new.db")));
    }

    [Fact]
    public async Task Restore_NoFileOfCases_IsRefusedAndLeavesNothing()
    {
        await File.WriteAllTextAsync(folder.File("letter.txt"),
            string.Concat(Enumerable.Repeat("Dear customer, ", 200)));

        Assert.Equal(2, (await RunAsync(folder.File("new.db"), "restore", folder.File("letter.txt"))).Code);
        Assert.False(File.Exists(folder.File("new.db")));
    }

    [Fact]
    public async Task Backup_OfADatabase_NamesItsOwnTool()
    {
        var run = await Run.OfAsync("", "cases", "backup", folder.File("copy.db"), "--store", "Host=127.0.0.1");

        Assert.Equal(2, run.Code);
        Assert.Contains("pg_dump", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Verify_RowAlteredInTheFile_NamesCaseAndEntry()
    {
        Alter("UPDATE event SET body = replace(body, 'b5', 'b9') WHERE case_id = 'b'");

        var run = await RunAsync(CasesFile, "verify");

        Assert.Equal(1, run.Code);
        Assert.Contains("entry 2 of case b was altered", run.Output, StringComparison.Ordinal);
        Assert.Contains("2 looked at, 1 not as recorded", run.Output, StringComparison.Ordinal);
        Assert.Equal(0, (await RunAsync(CasesFile, "verify", "a")).Code);
        Assert.Equal(1, (await RunAsync(CasesFile, "verify", "nobody")).Code);
    }

    [Fact]
    public async Task Export_ThenImportElsewhere_IsTheSameCase()
    {
        string file = folder.File("b.json");
        Assert.Equal(0, (await RunAsync(CasesFile, "export", "b", file)).Code);
        Assert.Equal(0, (await RunAsync(CasesFile, "verify", file)).Code);

        Assert.Equal(0, (await RunAsync(folder.File("new.db"), "import", file)).Code);
        Assert.Equal(2, (await RunAsync(folder.File("new.db"), "import", file)).Code);

        await using var one = SqliteCaseStore.Open(CasesFile, TimeProvider.System);
        await using var other = SqliteCaseStore.Open(folder.File("new.db"), TimeProvider.System);
        Assert.Equal<StoredEvent>(await one.ReadAsync("b"), await other.ReadAsync("b"));
    }

    [Fact]
    public async Task Import_AlteredFile_IsRefused()
    {
        string file = folder.File("b.json");
        await RunAsync(CasesFile, "export", "b", file);
        await File.WriteAllTextAsync(
            file, (await File.ReadAllTextAsync(file)).Replace("b5", "b9", StringComparison.Ordinal));

        Assert.Equal(1, (await RunAsync(CasesFile, "verify", file)).Code);
        Assert.Equal(2, (await RunAsync(folder.File("new.db"), "import", file)).Code);
        await using var store = SqliteCaseStore.Open(folder.File("new.db"), TimeProvider.System);
        Assert.Empty(await store.NamesAsync());
    }

    [Fact]
    public async Task Blank_Case_LeavesNoWordInTheFileAndTheChainWhole()
    {
        Assert.Equal(0, (await RunAsync(CasesFile, "blank", "a")).Code);
        Assert.Equal(2, (await RunAsync(CasesFile, "blank", "nobody")).Code);

        Assert.Equal(0, (await RunAsync(CasesFile, "verify")).Code);
        foreach (string file in Directory.EnumerateFiles(folder.Path))
            Assert.DoesNotContain("Ottery", await File.ReadAllTextAsync(file), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Export_UnknownCaseOrMistypedOption_IsRefused()
    {
        Assert.Equal(2, (await RunAsync(CasesFile, "export", "nobody", folder.File("x.json"))).Code);
        Assert.Equal(2, (await RunAsync(CasesFile, "verify", "--fast")).Code);
        Assert.False(File.Exists(folder.File("x.json")));
    }

    [Fact]
    public async Task VerifyAndImport_FileOfCases_SayWhatToUseAndMakeNothing()
    {
        Assert.Contains("cases verify --data", (await RunAsync(folder.File("new.db"), "verify", CasesFile)).Error,
            StringComparison.Ordinal);
        Assert.Contains("cases restore", (await RunAsync(folder.File("new.db"), "import", CasesFile)).Error,
            StringComparison.Ordinal);
        Assert.False(File.Exists(folder.File("new.db")));
    }

    [Fact]
    public async Task Restore_ExportedCase_SaysWhatToUse()
    {
        await RunAsync(CasesFile, "export", "a", folder.File("a.json"));

        Assert.Contains("cases import", (await RunAsync(folder.File("new.db"), "restore", folder.File("a.json"))).Error,
            StringComparison.Ordinal);
    }

    [Fact]
    public async Task Import_AlteredFile_MakesNoFileOfCases()
    {
        await RunAsync(CasesFile, "export", "a", folder.File("a.json"));
        await File.WriteAllTextAsync(folder.File("a.json"),
            (await File.ReadAllTextAsync(folder.File("a.json"))).Replace("\"case\": \"a\"", "\"case\": \"c\""));

        Assert.Equal(2, (await RunAsync(folder.File("new.db"), "import", folder.File("a.json"))).Code);
        Assert.False(File.Exists(folder.File("new.db")));
    }

    [Fact]
    public async Task Person_NothingKept_WritesNoFile()
    {
        var run = await RunAsync(CasesFile, "person", "Nobody Known", folder.File("out.json"));

        Assert.Equal((2, false), (run.Code, File.Exists(folder.File("out.json"))));
    }

    private static Task<Run> RunAsync(string data, string command, params string[] arguments) =>
        Run.OfAsync("", ["cases", command, .. arguments, "--data", data]);

    private void Alter(string sql)
    {
        using var connection = new SqliteConnection($"Data Source={CasesFile};Pooling=False");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        command.ExecuteNonQuery();
    }
}
