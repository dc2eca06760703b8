using DxAssistant.Cases;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;

namespace DxAssistant.Bot.Tests.Cases;

public sealed class CaseDeskTests : IAsyncDisposable
{
    private readonly MemoryCaseStore store = new(TimeProvider.System);
    private readonly EchoResponder echo = new();
    private readonly CaseDesk desk;

    public CaseDeskTests() => desk = new CaseDesk(store, () => echo);

    public ValueTask DisposeAsync() => store.DisposeAsync();

    [Fact]
    public async Task OpenAsync_NewCase_StoresTheOpening()
    {
        var answer = await desk.OpenAsync("a", "technician");

        Assert.Equal("You said nothing yet.", answer.Reply.Segments[0].Text);
        Assert.Equal(0, answer.Before);
        Assert.IsType<Said>((await desk.ReadAsync("a"))[0].Event);
    }

    [Fact]
    public async Task OpenAsync_Twice_IsOneTurn()
    {
        var first = await desk.OpenAsync("a", "technician");
        var second = await desk.OpenAsync("a", "technician");

        Assert.False(first.Repeated);
        Assert.True(second.Repeated);
        Assert.Equal(first.Last, (await desk.ReadAsync("a")).Length);
    }

    [Fact]
    public async Task TakeAsync_UnknownCase_SaysSoAndStoresNothing()
    {
        Assert.Equal(new DeskAnswer.UnknownCase("a"), await desk.TakeAsync("a", Words("t1", "hello")));
        Assert.Empty(await desk.ReadAsync("a"));
    }

    [Fact]
    public async Task TakeAsync_NameOfTheOpening_IsNotTakenForIt()
    {
        await desk.OpenAsync("a", "technician");

        await Assert.ThrowsAsync<ArgumentException>(() => desk.TakeAsync("a", Words(CaseDesk.OpeningTurn, "fan dead")));
    }

    [Fact]
    public async Task TakeAsync_RetriedTurn_GivesTheStoredReplyAndAppendsNothing()
    {
        await desk.OpenAsync("a", "technician");
        var first = await TakeAsync(Words("t1", "fan dead"));
        await TakeAsync(Words("t2", "no, it hums"));

        var retry = await TakeAsync(Words("t1", "fan dead"));

        Assert.True(retry.Repeated);
        Assert.Equal(first.Reply.Segments[0].Text, Assert.Single(retry.Reply.Segments).Text);
        Assert.Equal(3, echo.Asked);
    }

    [Fact]
    public async Task TakeAsync_AnotherTurnCameFirst_IsWorkedOutAgainOnTheNewLog()
    {
        await desk.OpenAsync("a", "technician");
        bool raced = false;
        echo.WhenAsked = log =>
        {
            if (raced) return;
            raced = true;
            store.AppendAsync("a", log.Length, "other tab", [new CodeReported("b4", "b4")]).GetAwaiter().GetResult();
        };

        var answer = await TakeAsync(Words("t1", "fan dead"));

        Assert.Equal(3, answer.Before);
        Assert.Equal([1L, 2, 3, 4, 5], (await desk.ReadAsync("a")).Select(e => e.Sequence));
    }

    [Fact]
    public async Task TakeAsync_ManyTabsAtOnce_EveryTurnIsThereOnce()
    {
        await desk.OpenAsync("a", "technician");

        await Task.WhenAll(
            Enumerable.Range(0, 20).Select(i => Task.Run(() => TakeAsync(Words($"t{i}", $"words {i}")))));

        var said = (await desk.ReadAsync("a")).Select(e => e.Event).OfType<Said>().Select(s => s.TurnId);
        Assert.Equal(21, said.Distinct().Count());
    }

    private async Task<DeskAnswer.Answered> TakeAsync(Message message) =>
        Assert.IsType<DeskAnswer.Answered>(await desk.TakeAsync("a", message));

    private static Message Words(string turn, string text) => new(turn, new MessageBody.Words(text));
}
