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

    // Whatever way is taken for how common the words are, the same is found.
    [Theory]
    [InlineData(0, 0)]
    [InlineData(0, 1_000)]
    [InlineData(1_000, 1_000)]
    public async Task Read_WordsRareOrCommon_FindsTheSame(int few, int many)
    {
        await FillAsync(Store);
        await using var connection =
            new SqliteConnection($"Data Source={folder.File("cases.db")};Mode=ReadOnly;Pooling=False");
        await connection.OpenAsync();
        foreach (string text in new[] { "water", "water drips", "sn 00", "water gyroscope", "wall water sn", "" })
        {
            foreach (var order in Enum.GetValues<WorkOrder>())
            {
                var query = new WorkQuery(text, Order: order);
                var found = WorkSearch.Read(connection, query, WorkMatch.Of(connection, text, few, many));
                Assert.Equal(await NamesAsync(Store, query), string.Join(' ', found.Lines.Select(line => line.Id)));
            }
        }
    }

    protected override async Task<long> EntriesAsync(string word)
    {
        await using var connection =
            new SqliteConnection($"Data Source={folder.File("cases.db")};Mode=ReadOnly;Pooling=False");
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
