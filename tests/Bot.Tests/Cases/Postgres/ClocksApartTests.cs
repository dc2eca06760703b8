using System.Collections.Immutable;
using DxAssistant.Cases;
using DxAssistant.Cases.Export;
using DxAssistant.Cases.Postgres;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;

namespace DxAssistant.Bot.Tests.Cases.Postgres;

/// <summary>
/// Three servers on one database whose clocks are far apart: what was said stands in the order it was taken, whatever
/// the clocks say.
/// </summary>
[NeedsPostgres]
[Collection(PostgresGroup.Name)]
public sealed class ClocksApartTests(PostgresServer server) : IAsyncLifetime
{
    private const int Turns = 30;
    private const string Case = "a";

    private static readonly DateTimeOffset Noon = new(2026, 11, 26, 12, 0, 0, TimeSpan.Zero);
    private static readonly ImmutableArray<TimeSpan> Apart =
        [TimeSpan.Zero, TimeSpan.FromDays(-400), TimeSpan.FromDays(400)];

    private ImmutableArray<PostgresCaseStore> stores = [];
    private ImmutableArray<CaseDesk> desks = [];

    public async Task InitializeAsync()
    {
        if (!PostgresServer.IsThere) return;
        string place = server.NewPlace();
        foreach (TimeSpan apart in Apart)
            stores = stores.Add(await PostgresCaseStore.OpenAsync(place, new SetClock(Noon + apart)));
        desks = [.. stores.Select(store => new CaseDesk(store, () => new EchoResponder()))];
        await desks[0].OpenAsync(Case, "technician");
    }

    public async Task DisposeAsync()
    {
        foreach (var store in stores) await store.DisposeAsync();
    }

    [StoreFact]
    public async Task TakeAsync_EachTurnAtAnotherServer_StandInTheOrderTheyWereTaken()
    {
        for (int turn = 0; turn < Turns; turn++) await TakeAsync(turn, turn);

        Assert.Equal(Enumerable.Range(0, Turns).Select(Name), (await SaidAsync()).Skip(1));
        Assert.Contains((await stores[0].ReadAsync(Case)).Zip((await stores[0].ReadAsync(Case)).Skip(1)),
            pair => pair.Second.At < pair.First.At);
        await AreSoundAsync();
    }

    [StoreFact]
    public async Task TakeAsync_SameTurnAgainAtAServerThatIsBehind_IsOneTurn()
    {
        for (int turn = 0; turn < Turns; turn++)
        {
            var first = await TakeAsync(turn, turn);
            var again = await TakeAsync(turn + 1, turn);
            Assert.True(again.Repeated);
            Assert.Equal((first.Last, first.At), (again.Last, again.At));
        }

        await AreSoundAsync();
    }

    [StoreFact]
    public async Task TakeAsync_AllAtOnce_EveryTurnIsThereOnce()
    {
        await Task.WhenAll(Enumerable.Range(0, Turns).Select(turn => Task.Run(() => TakeAsync(turn, turn))));

        Assert.Equal(Enumerable.Range(0, Turns).Select(Name).Order(), (await SaidAsync()).Skip(1).Order());
        await AreSoundAsync();
    }

    private async Task<DeskAnswer.Answered> TakeAsync(int place, int turn) => Assert.IsType<DeskAnswer.Answered>(
        await desks[place % desks.Length].TakeAsync(Case,
            new Message(Name(turn), new MessageBody.Words($"words {turn}"))));

    private static string Name(int turn) => FormattableString.Invariant($"t{turn}");

    private async Task<IEnumerable<string>> SaidAsync() =>
        (await stores[0].ReadAsync(Case)).Select(stored => stored.Event).OfType<Said>().Select(said => said.TurnId);

    // Every server reads the same log, and its hashes fit.
    private async Task AreSoundAsync()
    {
        string[] hashes = [.. (await stores[0].ReadAsync(Case)).Select(stored => stored.Hash)];
        foreach (var store in stores)
        {
            Assert.Equal(hashes, (await store.ReadAsync(Case)).Select(stored => stored.Hash));
            Assert.True(await CaseExchange.IsSoundAsync(store, Case));
        }
    }
}
