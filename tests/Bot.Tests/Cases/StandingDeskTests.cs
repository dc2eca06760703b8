using System.Text.Json;
using DxAssistant.Bot.Tests.Conversation;
using DxAssistant.Bot.Tests.Load;
using DxAssistant.Bot.Tests.Server;
using DxAssistant.Cases;
using DxAssistant.Conversation;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Sheets;
using DxAssistant.Server.Chat;

namespace DxAssistant.Bot.Tests.Cases;

/// <summary>A desk that keeps in mind where cases stand answers as one that reads each log anew.</summary>
public sealed class StandingDeskTests : IAsyncDisposable
{
    private readonly MemoryCaseStore store = new(new SetClock(new DateTimeOffset(2030, 5, 6, 12, 0, 0, TimeSpan.Zero)));

    public ValueTask DisposeAsync() => store.DisposeAsync();

    [Fact]
    public async Task TakeAsync_WholeConversations_AreTheSameAsReadAnew()
    {
        var standing = new CaseDesk(store, () => Shipped.InUse.Responder);
        int walk = 0;
        foreach (var turns in new WalkRecorder(ShippedContent.Assistant).Record(2, seed: 3))
        {
            string mine = $"mine-{++walk}", anew = $"anew-{walk}";
            await standing.OpenAsync(mine, "ann");
            await new CaseDesk(store, () => Shipped.InUse.Responder).OpenAsync(anew, "ann");
            foreach (var turn in turns)
            {
                var message = MessageOf(turn);
                var answer = await standing.TakeAsync(mine, message);
                await new CaseDesk(store, () => Shipped.InUse.Responder).TakeAsync(anew, message);
                await IsShownAsync((DeskAnswer.Answered)answer, turn.TurnId);
            }

            Assert.Equal(await TextAsync(anew), await TextAsync(mine));
        }
    }

    // Two servers on one store: each has in mind what the other has made old.
    [Fact]
    public async Task TakeAsync_TwoDesksByTurns_AreTheSameAsOne()
    {
        CaseDesk[] desks = [new(store, () => Shipped.InUse.Responder), new(store, () => Shipped.InUse.Responder)];
        var turns = new WalkRecorder(ShippedContent.Assistant).Record(1, seed: 8)[0];
        await desks[0].OpenAsync("a", "ann");
        await desks[0].OpenAsync("b", "ann");
        for (int i = 0; i < turns.Length; i++)
        {
            await desks[i % 2].TakeAsync("a", MessageOf(turns[i]));
            await desks[0].TakeAsync("b", MessageOf(turns[i]));
        }

        Assert.Equal(await TextAsync("b"), await TextAsync("a"));
    }

    [Fact]
    public async Task TakeAsync_RetryOfACaseInMind_GivesTheStoredReplyAndAppendsNothing()
    {
        var desk = new CaseDesk(store, () => Shipped.InUse.Responder);
        await desk.OpenAsync("a", "ann");
        var first = (DeskAnswer.Answered)await desk.TakeAsync("a",
            new Message("t1", new MessageBody.Words("the fan does not turn")));
        await desk.TakeAsync("a", new Message("t2", new MessageBody.Words("help")));
        long last = await store.LastAsync("a");

        var again = (DeskAnswer.Answered)await desk.TakeAsync("a",
            new Message("t1", new MessageBody.Words("the fan does not turn")));

        Assert.True(again.Repeated);
        Assert.Equal(first.Last, again.Last);
        Assert.Equal(last, await store.LastAsync("a"));
    }

    [Fact]
    public async Task TakeAsync_WordsWereRemoved_AreNotInMindEither()
    {
        var core = new ToldResponder();
        var desk = new CaseDesk(store, () => core);
        await desk.OpenAsync("a", "ann");
        await desk.TakeAsync("a", new Message("t1", new MessageBody.Words("call Tamsin Ottery")));
        await desk.TakeAsync("a", new Message("t2", new MessageBody.Words("and?")));
        Assert.Contains("Ottery", core.Known, StringComparison.Ordinal);

        await store.BlankAsync("a");
        await desk.TakeAsync("a", new Message("t3", new MessageBody.Words("and now?")));

        Assert.DoesNotContain("Ottery", core.Known, StringComparison.Ordinal);
    }

    private static Message MessageOf(RecordedTurn turn)
    {
        using var json = JsonDocument.Parse(turn.Message);
        Assert.True(AnswerReader.TryRead(json.RootElement, out var body, out _));
        return new Message(turn.TurnId, body!, "ann");
    }

    // What is told right after the turn is what is told when the log is read.
    private async Task IsShownAsync(DeskAnswer.Answered answer, string turnId)
    {
        var titles = Shipped.InUse.Titles;
        var log = await store.ReadAsync(answer.CaseId);
        var read = TurnTaken.Of(CaseSheet.Of(answer.CaseId, log, titles), log, turnId);
        Assert.Equal(
            JsonSerializer.Serialize(read, ChatJson.Options),
            JsonSerializer.Serialize(TurnTaken.Of(answer, answer.Done!, titles), ChatJson.Options));
    }

    private async Task<string> TextAsync(string caseId) => JsonSerializer.Serialize(
        [.. (await store.ReadAsync(caseId)).Select(stored => stored.Event)],
        ConversationJson.Default.ImmutableArrayCaseEvent);
}
