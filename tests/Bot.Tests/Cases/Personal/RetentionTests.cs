using DxAssistant.Cases;
using DxAssistant.Cases.Calls;
using DxAssistant.Cases.Personal;
using DxAssistant.Cases.Sqlite;
using DxAssistant.Cases.WorkList;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using Microsoft.Data.Sqlite;

namespace DxAssistant.Bot.Tests.Cases.Personal;

/// <summary>Words go by themselves once they are old, and nothing else does.</summary>
public sealed class RetentionTests : IDisposable
{
    private static readonly DateTimeOffset Noon = new(2030, 5, 6, 12, 0, 0, TimeSpan.Zero);

    private readonly TemporaryFolder folder = new();
    private readonly SetClock clock = new(Noon);

    [Fact]
    public async Task Sweep_OldCasesAndCalls_LoseTheirWords_ChainAndResultsStay()
    {
        await using var cases = SqliteCaseStore.Open(folder.File("cases.db"), clock);
        await using var books = DeskBooks.Open(folder.File("cases.db"));
        var retention = new Retention(cases, books, TimeSpan.FromDays(30), clock);
        await SayAsync(cases, "old", "Ingrid Ottery says the fan stands");
        await books.Calls.PutAsideAsync(new CallSlip("old", "Ingrid", "555 0142", null, Noon, "anna"));
        clock.Time = Noon.AddDays(10);
        await SayAsync(cases, "young", "Halvorsen called");

        clock.Time = Noon.AddDays(30);
        Assert.Equal(0, await retention.SweepAsync());
        clock.Time = Noon.AddDays(30).AddMinutes(1);
        Assert.Equal(1, await retention.SweepAsync());
        Assert.Equal(0, await retention.SweepAsync());

        var log = await cases.ReadAsync("old");
        Assert.Equal(new CodeReported("b4", null), log[1].Event);
        Assert.Equal("[removed]", Assert.IsType<MessageBody.Words>(Assert.IsType<Said>(log[0].Event).Body).Text);
        Assert.Empty((await cases.SearchAsync(new WorkQuery("ottery"))).Lines);
        Assert.Single((await cases.SearchAsync(new WorkQuery("halvorsen"))).Lines);
        Assert.Null(Assert.Single(await books.Calls.WaitingAsync()).Phone);
    }

    [Fact]
    public async Task Sweep_CaseTakenUpAgain_LosesItsNewWordsInTheirTime()
    {
        await using var cases = new MemoryCaseStore(clock);
        var retention = new Retention(cases, DeskBooks.InMemory(), TimeSpan.FromDays(30), clock);
        await SayAsync(cases, "a", "Ingrid");
        clock.Time = Noon.AddDays(40);
        await retention.SweepAsync();
        await cases.AppendAsync("a", 2, "t2", [new Said("t2", "tom", new MessageBody.Words("Ingrid again"))]);

        Assert.Equal(0, await retention.SweepAsync());
        clock.Time = Noon.AddDays(71);
        Assert.Equal(1, await retention.SweepAsync());
    }

    // Whoever alters one case must not keep the words of all others in the file.
    [Fact]
    public async Task Sweep_CaseThatWasAltered_IsSaidAndTheOthersAreSwept()
    {
        await using var cases = SqliteCaseStore.Open(folder.File("cases.db"), clock);
        await SayAsync(cases, "altered", "Ingrid Ottery");
        await SayAsync(cases, "sound", "Halvorsen called");
        await using (var connection = new SqliteConnection($"Data Source={folder.File("cases.db")};Pooling=False"))
        {
            await connection.OpenAsync();
            await using var command = connection.CreateCommand();
            command.CommandText = "UPDATE event SET hash = 'x' WHERE case_id = 'altered'";
            await command.ExecuteNonQueryAsync();
        }

        clock.Time = Noon.AddDays(31);
        var error = await Assert.ThrowsAsync<CaseFileException>(
            () => new Retention(cases, DeskBooks.InMemory(), TimeSpan.FromDays(30), clock).SweepAsync());

        Assert.Contains("altered", error.Message, StringComparison.Ordinal);
        Assert.Empty((await cases.SearchAsync(new WorkQuery("halvorsen"))).Lines);
    }

    public void Dispose() => folder.Dispose();

    private static Task<AppendResult> SayAsync(ICaseStore cases, string id, string words) => cases.AppendAsync(
        id, 0, "t1", [new Said("t1", "tom", new MessageBody.Words(words)), new CodeReported("b4", null)]);
}
