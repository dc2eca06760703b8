using DxAssistant.Cases;
using DxAssistant.Cases.Postgres;
using DxAssistant.Cases.WorkList;
using Npgsql;

namespace DxAssistant.Bot.Tests.Cases.Postgres;

[NeedsPostgres]
[Collection(PostgresGroup.Name)]
public sealed class PostgresWorkListTests(PostgresServer server) : LastingWorkListTests
{
    private string place = "";

    protected override async Task<ICaseStore> MakeAsync() =>
        await PostgresCaseStore.OpenAsync(place = server.NewPlace(), TimeProvider.System);

    protected override async Task<long> EntriesAsync(string word)
    {
        await using var connection = new NpgsqlConnection(place);
        await connection.OpenAsync();
        await using var command = new NpgsqlCommand("SELECT count(*) FROM work_text WHERE words @@ CAST($1 AS tsquery)",
            connection) { Parameters = { new() { Value = word } } };
        return (long)(await command.ExecuteScalarAsync())!;
    }

    // As a program before there was a work list left it.
    [StoreFact]
    public async Task Open_DatabaseWithoutIndex_IsIndexed()
    {
        await FillAsync(Store);
        await using (var connection = new NpgsqlConnection(place))
        {
            await connection.OpenAsync();
            await using var command = new NpgsqlCommand(
                "DROP TABLE work_text, blanked; DROP INDEX job_by_last_at; ALTER TABLE job DROP COLUMN series, DROP "
                    + "COLUMN fault, DROP COLUMN ended; UPDATE schema_version SET version = 3;",
                connection);
            await command.ExecuteNonQueryAsync();
        }

        await using var again = await PostgresCaseStore.OpenAsync(place, TimeProvider.System);
        Assert.Equal("b a", await NamesAsync(again, new WorkQuery("water")));
        Assert.Equal("b", await NamesAsync(again, new WorkQuery("", Series: "wall", Open: false)));
    }
}
