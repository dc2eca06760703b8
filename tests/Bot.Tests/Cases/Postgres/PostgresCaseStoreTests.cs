using System.Threading.Channels;
using DxAssistant.Cases;
using DxAssistant.Cases.Postgres;
using Npgsql;

namespace DxAssistant.Bot.Tests.Cases.Postgres;

[NeedsPostgres]
[Collection(PostgresGroup.Name)]
public sealed class PostgresCaseStoreTests(PostgresServer server) : LastingCaseStoreTests
{
    private string place = "";

    protected override async Task<ICaseStore> MakeAsync(TimeProvider clock) =>
        await PostgresCaseStore.OpenAsync(place = server.NewPlace(), clock);

    protected override Task AlterAsync(string sql) => RunAsync(sql);

    [StoreFact]
    public async Task AppendAsync_TwoServersOnOneDatabase_EachPlaceIsTakenOnce()
    {
        await using var other = await PostgresCaseStore.OpenAsync(place, TimeProvider.System);

        var results = await Task.WhenAll(Enumerable.Range(0, 40).Select(i =>
            (i % 2 == 0 ? Store : other).AppendAsync("a", 0, $"t{i}", Events("b4", "b5"))));

        Assert.Single(results.OfType<AppendResult.Appended>());
        Assert.All(results.OfType<AppendResult.Conflict>(), conflict => Assert.Equal(2, conflict.LastSequence));
        Assert.Equal(2, (await other.ReadAsync("a")).Length);
    }

    [StoreFact]
    public async Task News_OfAnotherServer_IsHeardAndAgainAfterTheConnectionWasCut()
    {
        await using var other = await PostgresCaseStore.OpenAsync(place, TimeProvider.System);
        using var end = new CancellationTokenSource();
        var heard = Channel.CreateUnbounded<string?>();
        Task hearing = other.News.HearAsync(one => heard.Writer.TryWrite(one), end.Token);

        Assert.Null(await heard.Reader.ReadAsync());
        Assert.True(other.News.Hears);
        other.News.Tell("its own");
        Store.News!.Tell("a");
        Assert.Equal("a", await heard.Reader.ReadAsync());

        await RunAsync("SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE query = 'LISTEN dx_case'");
        Assert.Null(await heard.Reader.ReadAsync());
        Assert.Null(await heard.Reader.ReadAsync());
        Store.News!.Tell("b");
        Assert.Equal("b", await heard.Reader.ReadAsync());
        await end.CancelAsync();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => hearing);
        Assert.False(other.News.Hears);
    }

    [StoreFact]
    public async Task AppendAsync_SameTurnOnTwoServers_IsOneTurn()
    {
        await using var other = await PostgresCaseStore.OpenAsync(place, TimeProvider.System);

        await Task.WhenAll(Enumerable.Range(0, 40).Select(i =>
            (i % 2 == 0 ? Store : other).AppendAsync("a", 0, "t", Events("b4"))));

        Assert.Single(await other.ReadAsync("a"));
    }

    [StoreFact]
    public async Task OpenAsync_ManyServersAtOnce_OneMakesTheTables()
    {
        string empty = server.NewPlace();

        var stores = await Task.WhenAll(
            Enumerable.Range(0, 6).Select(_ => PostgresCaseStore.OpenAsync(empty, TimeProvider.System)));

        Assert.All(stores, Assert.NotNull);
        foreach (var store in stores) await store.DisposeAsync();
    }

    [StoreFact]
    public async Task OpenAsync_DatabaseOfALaterVersion_SaysSoAndLeavesItAlone()
    {
        await RunAsync("UPDATE schema_version SET version = 999");

        var error = await Assert.ThrowsAsync<CaseFileException>(
            () => PostgresCaseStore.OpenAsync(place, TimeProvider.System));

        Assert.Contains("version 999", error.Message, StringComparison.Ordinal);
        Assert.Contains("use a newer program", error.Message, StringComparison.Ordinal);
    }

    [StoreTheory]
    [InlineData("Host=127.0.0.1;Port=1;Username=dx;Timeout=1")]
    [InlineData("nonsense")]
    public async Task OpenAsync_NoSuchDatabase_SaysWhatToDo(string connection)
    {
        var error = await Assert.ThrowsAsync<CaseFileException>(
            () => PostgresCaseStore.OpenAsync(connection, TimeProvider.System));

        Assert.Contains("--store", error.Message, StringComparison.Ordinal);
    }

    [StoreFact]
    public async Task Kill_WhileAppending_EverythingAcknowledgedIsThereAndNoTurnIsHalf() =>
        await new KilledChild(place).CheckAsync(60);

    private async Task RunAsync(string sql)
    {
        await using var connection = new NpgsqlConnection(place);
        await connection.OpenAsync();
        await using var command = new NpgsqlCommand(sql, connection);
        await command.ExecuteNonQueryAsync();
    }
}
