using System.Collections.Immutable;
using DxAssistant.Bot.Tests.Server;
using DxAssistant.Cases;
using DxAssistant.Cases.Brought;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;

namespace DxAssistant.Bot.Tests.Cases;

/// <summary>Turns taken away from the server come home once, whole, and only when they follow.</summary>
public sealed class BroughtDeskTests : IAsyncDisposable
{
    private const string By = "technician";

    private static readonly IResponder Core = Shipped.InUse.Responder;
    private static readonly string[] Words = ["b4", "Brenholt WS", "technician", "done"];

    private readonly MemoryCaseStore store = new(TimeProvider.System);
    private readonly CaseDesk desk;
    private readonly BroughtDesk brought;

    public BroughtDeskTests()
    {
        desk = new CaseDesk(store, () => Core);
        brought = new BroughtDesk(store, version => version == Shipped.InUse.Version ? Core : null);
    }

    public ValueTask DisposeAsync() => store.DisposeAsync();

    [Fact]
    public async Task Take_WholeCaseBegunAway_IsThereAndBringingItAgainAddsNothing()
    {
        var turns = Away([], "opening", Words);

        var first = await brought.TakeAsync("case", 0, turns, By);
        var again = await brought.TakeAsync("case", 0, turns, By);

        Assert.Equal(new BroughtAnswer.Taken(turns.Sum(t => t.Events.Length), turns.Length), first);
        Assert.Equal(new BroughtAnswer.Taken(turns.Sum(t => t.Events.Length), 0), again);
    }

    [Fact]
    public async Task Take_AnyPartStoredBefore_AddsTheRest()
    {
        var turns = Away([], "opening", Words);
        for (int stored = 1; stored <= turns.Length; stored++)
        {
            await brought.TakeAsync($"case{stored}", 0, turns[..stored], By);

            var answer = await brought.TakeAsync($"case{stored}", 0, turns, By);

            Assert.Equal(new BroughtAnswer.Taken(turns.Sum(t => t.Events.Length), turns.Length - stored), answer);
        }
    }

    [Fact]
    public async Task Take_JobWrittenDownMeanwhile_IsNotInTheWay()
    {
        await desk.OpenAsync("case", By);
        var log = await LogAsync();
        var turns = Away(log, null, ["b4"]);
        await store.AppendAsync("case", log.Length, "job.1", [new NoteWritten("dora", "Caller waits.")]);

        Assert.IsType<BroughtAnswer.Taken>(await brought.TakeAsync("case", log.Length, turns, By));
        Assert.Equal(new BroughtAnswer.Taken((await LogAsync()).Length, 0),
            await brought.TakeAsync("case", log.Length, turns, By));
    }

    [Fact]
    public async Task Take_TurnWhoseAnswerWasLost_IsNotTakenTwice()
    {
        await desk.OpenAsync("case", By);
        var log = await LogAsync();
        var turns = Away(log, null, Words);
        await desk.TakeAsync("case", MessageOf(turns[0]));

        var answer = await brought.TakeAsync("case", log.Length, turns, By);

        Assert.Equal(turns.Length - 1, Assert.IsType<BroughtAnswer.Taken>(answer).Added);
        Assert.Equal(1, (await LogAsync()).OfType<Said>().Count(said => said.TurnId == turns[0].TurnId));
    }

    [Fact]
    public async Task Take_SomebodyElseAnsweredMeanwhile_ChangesNothing()
    {
        await desk.OpenAsync("case", By);
        var log = await LogAsync();
        await desk.TakeAsync("case", new Message("theirs", new MessageBody.Words("e5")));
        var before = await LogAsync();

        var answer = await brought.TakeAsync("case", log.Length, Away(log, null, Words), By);

        Assert.Equal(new BroughtAnswer.Crossed(before.Length), answer);
        Assert.Equal(before.Length, (await LogAsync()).Length);
    }

    [Fact]
    public async Task Take_EventPutIn_DoesNotFollow()
    {
        var turns = Away([], "opening", Words);
        var forged =
            turns.SetItem(3, turns[3] with { Events = turns[3].Events.Insert(1, new AccessReached("isolated-open")) });

        var answer = await brought.TakeAsync("case", 0, forged, By);

        Assert.Equal(new BroughtAnswer.DoesNotFollow(turns[3].TurnId), answer);
        Assert.Empty(await LogAsync());
    }

    [Fact]
    public async Task Take_DeviceThatDidNotKnowItsHolder_IsSignedByWhoeverBringsIt()
    {
        var turns = Away([], "opening", Words);

        await brought.TakeAsync("case", 0, turns, "tom");

        Assert.All((await LogAsync()).OfType<Said>(), said => Assert.Equal("tom", said.By));
        Assert.Equal(0, Assert.IsType<BroughtAnswer.Taken>(await brought.TakeAsync("case", 0, turns, "tom")).Added);
    }

    [Fact]
    public async Task Take_AnswersOfSomebodyElse_AreNotSignedByTheBringer()
    {
        var turns = Away([], "opening", "b4");
        var toms = turns.SetItem(1, turns[1]
            with { Events = [.. turns[1].Events.Select(e => e is Said said ? said with { By = "tom" } : e)] });

        Assert.Equal(new BroughtAnswer.OfAnother("tom"), await brought.TakeAsync("case", 0, toms, "tilda"));
        Assert.Empty(await LogAsync());
        Assert.IsType<BroughtAnswer.Taken>(await brought.TakeAsync("case", 0, toms, "tom"));
    }

    [Fact]
    public async Task Take_ContentNeverHandedOut_SaysSo()
    {
        var elsewhere = new BroughtDesk(store, _ => null);

        var answer = await elsewhere.TakeAsync("case", 0, Away([], "opening", "b4"), By);

        Assert.Equal(new BroughtAnswer.UnknownContent(Shipped.InUse.Version), answer);
    }

    [Fact]
    public async Task Take_FirstTurnIsNoOpening_DoesNotFollow() =>
        Assert.IsType<BroughtAnswer.DoesNotFollow>(await brought.TakeAsync("case", 0, Away([], null, "b4"), By));

    private async Task<ImmutableArray<CaseEvent>> LogAsync() =>
        [.. (await store.ReadAsync("case")).Select(e => e.Event)];

    private static Message MessageOf(BroughtTurn turn) =>
        turn.Events.OfType<Said>().Select(said => new Message(said.TurnId, said.Body, said.By)).Single();

    private static ImmutableArray<BroughtTurn> Away(ImmutableArray<CaseEvent> log, string? opening,
        params string[] words)
    {
        var turns = ImmutableArray.CreateBuilder<BroughtTurn>();
        if (opening is not null) Take(new Message(opening, new MessageBody.Opening()));
        foreach (string said in words) Take(new Message($"away-{turns.Count}", new MessageBody.Words(said)));
        return turns.ToImmutable();

        void Take(Message message)
        {
            var events = Core.Respond(log, message).Events;
            log = log.AddRange(events);
            turns.Add(new BroughtTurn(message.TurnId, events));
        }
    }
}
