using DxAssistant.Bot.Tests.Server;
using DxAssistant.Bot.Tests.Server.Commands;
using DxAssistant.Cases;
using DxAssistant.Cases.Postgres;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;

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

        var talk = await Run.OfAsync("""{"text":"b4"}"""
            + "\n", "talk", "--json", "--store", place, "--content", Shipped.Folder);
        var verify = await Run.OfAsync("", "cases", "verify", "--store", place);

        Assert.Equal(0, talk.Code);
        Assert.Equal((0, "1 looked at, 0 not as recorded\n"), (verify.Code, verify.Output));
        await using var store = await PostgresCaseStore.OpenAsync(place, TimeProvider.System);
        Assert.Equal("b4", Assert.Single(await store.ListAsync(5)).Title);
    }

    // A closed case whose repair cured the fault, and pages that did not change.
    [StoreFact]
    public async Task FrequenciesAndCompare_StoreNamed_ReadTheCasesThere()
    {
        string place = server.NewPlace();
        await using (var store = await PostgresCaseStore.OpenAsync(place, TimeProvider.System))
        {
            await store.AppendAsync("one", 0, "t1", [
                new Opened("v"), new Said("t1", "technician", new MessageBody.Words("b4")),
                new RepairDone("replace-room-air-sensor"),
                new RepairVerified("replace-room-air-sensor", "sensor-room-air", true), new Closed("repaired"),
            ]);
        }

        var frequencies = await Run.OfAsync("", "content", "frequencies", Shipped.Folder, "--store", place);
        var compare =
            await Run.OfAsync("", "content", "compare", Shipped.Folder, Shipped.Folder, "--cases-store", place);

        Assert.Equal(0, frequencies.Code);
        Assert.StartsWith("1 proven faults in closed cases", frequencies.Output, StringComparison.Ordinal);
        Assert.Equal(0, compare.Code);
        Assert.Contains("1 said again, 0 with another conclusion.", compare.Output, StringComparison.Ordinal);
    }
}
