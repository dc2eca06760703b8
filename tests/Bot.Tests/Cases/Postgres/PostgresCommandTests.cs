using DxAssistant.Bot.Tests.Server;
using DxAssistant.Bot.Tests.Server.Commands;
using DxAssistant.Cases;
using DxAssistant.Cases.Postgres;

namespace DxAssistant.Bot.Tests.Cases.Postgres;

/// <summary>The commands on a database instead of a file.</summary>
[NeedsPostgres]
[Collection(PostgresGroup.Name)]
public sealed class PostgresCommandTests(PostgresServer server)
{
    [StoreFact]
    public async Task Talk_StoreNamed_KeepsTheCaseThereAndItVerifies()
    {
        string place = server.NewPlace();

        var talk = await Run.OfAsync("""{"text":"b4"}""" + "\n", "talk", "--json", "--store", place, "--content", Shipped.Folder);
        var verify = await Run.OfAsync("", "cases", "verify", "--store", place);

        Assert.Equal(0, talk.Code);
        Assert.Equal((0, "1 looked at, 0 not as recorded\n"), (verify.Code, verify.Output));
        await using var store = await PostgresCaseStore.OpenAsync(place, TimeProvider.System);
        Assert.Equal("b4", Assert.Single(await store.ListAsync(5)).Title);
    }
}
