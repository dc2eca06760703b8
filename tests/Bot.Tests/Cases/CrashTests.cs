using DxAssistant.Cases;
using DxAssistant.Cases.Sqlite;
using DxAssistant.Conversation.Events;

namespace DxAssistant.Bot.Tests.Cases;

/// <summary>The program is killed without warning while it appends.</summary>
public sealed class CrashTests
{
    [Theory]
    [InlineData(1)]
    [InlineData(40)]
    [InlineData(400)]
    public async Task Kill_WhileAppending_EverythingAcknowledgedIsThereAndNoTurnIsHalf(int turnsBeforeTheKill)
    {
        using var folder = new TemporaryFolder();
        await new KilledChild(folder.File("cases.db")).CheckAsync(turnsBeforeTheKill);
    }

    [Fact]
    public async Task Kill_ThenOpen_TheCaseGoesOn()
    {
        using var folder = new TemporaryFolder();
        string file = folder.File("cases.db");
        await new KilledChild(file).RunAsync(10);

        await using var store = SqliteCaseStore.Open(file, TimeProvider.System);
        var log = await store.ReadAsync("case0");
        var result = await store.AppendAsync("case0", log.Length, "after", [new CodeReported("b6", "b6")]);

        Assert.IsType<AppendResult.Appended>(result);
    }
}
