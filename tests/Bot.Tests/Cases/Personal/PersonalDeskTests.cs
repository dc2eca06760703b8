using DxAssistant.Bot.Tests.Cases.Claims;
using DxAssistant.Cases;
using DxAssistant.Cases.Accounts;
using DxAssistant.Cases.Calls;
using DxAssistant.Cases.Personal;
using DxAssistant.Cases.Sqlite;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;

namespace DxAssistant.Bot.Tests.Cases.Personal;

/// <summary>What is kept about a person is found wherever it lies, given out whole, and removed.</summary>
public sealed class PersonalDeskTests : IAsyncDisposable
{
    private static readonly DateTimeOffset Noon = new(2030, 5, 6, 12, 0, 0, TimeSpan.Zero);

    private readonly MemoryCaseStore cases = new(new SetClock(Noon));
    private readonly DeskBooks books = DeskBooks.InMemory();
    private readonly AccountBook accounts = SqliteAccounts.InMemory(new SetClock(Noon));

    private PersonalDesk Desk => new(cases, books, accounts, new SetClock(Noon));

    [Theory]
    [InlineData("Ottery", "job said")]
    [InlineData("555 77 31", "called job")]
    [InlineData("5557731", "called job")]
    [InlineData("TD-2309-41725", "job")]
    [InlineData("td230941725", "job")]
    [InlineData("Halvorsen", "")]
    public async Task Find_NameNumberSerial_FindsLogsCallsAndUnits(string about, string found)
    {
        await FillAsync();

        Assert.Equal(found, string.Join(' ', await Desk.FindAsync(about)));
    }

    [Theory]
    [InlineData("")]
    [InlineData(" ab ")]
    public async Task Find_FewerThanThreeCharacters_Throws(string about) =>
        await Assert.ThrowsAsync<ArgumentException>(() => Desk.FindAsync(about));

    [Fact]
    public async Task GiveOut_Name_HoldsWordsCallsAndTheAccount()
    {
        await FillAsync();
        accounts.Add(new Account("ottery", AccountRoles.Technician, "secret hash", "stamp"));
        accounts.Note("ottery", "saw case", "job");

        string all = (await Desk.GiveOutAsync("ottery")).ToJsonString();

        foreach (string kept in new[] { "Mrs Ottery says", "Ann Ottery", "5 Mill Lane", "555 77 31", "saw case" })
            Assert.Contains(kept, all, StringComparison.Ordinal);
        Assert.DoesNotContain("secret hash", all, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Blank_AllThatWasFound_NothingOfThePersonIsGivenOutAnyMore()
    {
        await FillAsync();
        await books.Calls.NoteAsync("job", new CallNote(Noon, "anna", "Ottery has no ladder"));
        foreach (string id in await Desk.FindAsync("Ottery")) Assert.NotNull(await Desk.BlankAsync(id));

        Assert.Empty(await Desk.FindAsync("Ottery"));
        string all = (await Desk.GiveOutAsync("TD-2309-41725")).ToJsonString();
        foreach (string gone in new[] { "Ottery", "Mill Lane", "555 77 31", "ladder" })
            Assert.DoesNotContain(gone, all, StringComparison.Ordinal);
        Assert.Contains("TD-2309-41725", all, StringComparison.Ordinal);
        Assert.Null(await Desk.BlankAsync("nobody"));
    }

    [Fact]
    public async Task GiveOut_SerialOfAClaimedCase_HoldsTheClaim()
    {
        await using var made = await ClaimedCase.WalkedAsync();
        var claim = await made.ReadyAsync();
        await made.Cases.AppendAsync(ClaimedCase.Id, await made.Cases.LastAsync(ClaimedCase.Id), "unit",
            [new UnitNoted("tom", 1, null, null, "BW12-004711", null, null)]);
        var desk = new PersonalDesk(made.Cases, books with { Claims = made.Claims }, accounts, made.Clock);

        var all = await desk.GiveOutAsync("BW12-004711");

        Assert.Equal(claim.Id, (string?)all["claims"]![0]!["claim"]);
        Assert.Equal(3, all["claims"]![0]!["entries"]!.AsArray().Count);
    }

    public async ValueTask DisposeAsync()
    {
        await books.DisposeAsync();
        await cases.DisposeAsync();
    }

    private async Task FillAsync()
    {
        await cases.AppendAsync("said", 0, "t1",
            [new Said("t1", "tom", new MessageBody.Words("Mrs Ottery says the fan stands"))]);
        await cases.AppendAsync("job", 0, "t1",
        [
            new Said("t1", "tom", new MessageBody.Words("code b4")),
            new UnitNoted("tom", 1, null, null, "TD-2309-41725", null, "5 Mill Lane"),
            new PersonNoted("tom", 1, "owner", "Ann Ottery", "555 77 31"),
        ]);
        await cases.AppendAsync("called", 0, "t1", [new Said("t1", "tom", new MessageBody.Words("water drips"))]);
        await books.Calls.PutAsideAsync(new CallSlip("called", "A neighbour", "(555) 7731", null, Noon, "anna"));
    }
}
