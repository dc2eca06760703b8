using DxAssistant.Cases;
using DxAssistant.Cases.Sqlite;
using DxAssistant.Cases.WorkList;
using Microsoft.Data.Sqlite;

namespace DxAssistant.Bot.Tests.Cases;

public sealed class SqliteWorkListTests : LastingWorkListTests, IDisposable
{
    private readonly TemporaryFolder folder = new();

    protected override Task<ICaseStore> MakeAsync() =>
        Task.FromResult<ICaseStore>(SqliteCaseStore.Open(folder.File("cases.db"), TimeProvider.System));

    protected override async Task<long> EntriesAsync(string word)
    {
        await using var connection = new SqliteConnection($"Data Source={folder.File("cases.db")};Mode=ReadOnly;Pooling=False");
        await connection.OpenAsync();
        await using var command = connection.CreateCommand();
        command.CommandText = "SELECT count(*) FROM work_text WHERE work_text MATCH $word";
        command.Parameters.AddWithValue("$word", word);
        return (long)(await command.ExecuteScalarAsync())!;
    }

    public void Dispose() => folder.Dispose();

    // A file from before there was an index is indexed when it is opened.
    [Fact]
    public async Task Open_FileWithoutIndex_IsIndexed()
    {
        string file = folder.File("old.db");
        await using (var store = SqliteCaseStore.Open(file, TimeProvider.System)) await FillAsync(store);
        await using (var connection = new SqliteConnection($"Data Source={file};Pooling=False"))
        {
            await connection.OpenAsync();
            await using var command = connection.CreateCommand();
            command.CommandText = "DROP TABLE work_text; DROP TABLE work;";
            await command.ExecuteNonQueryAsync();
        }

        await using var again = SqliteCaseStore.Open(file, TimeProvider.System);
        Assert.Equal("b a", await NamesAsync(again, new WorkQuery("water")));
    }
}
