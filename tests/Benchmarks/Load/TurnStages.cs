using System.Collections.Immutable;
using System.Text.Json;
using DxAssistant.Bot.Tests.Load;
using DxAssistant.Cases;
using DxAssistant.Cases.Sqlite;
using DxAssistant.Conversation;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Sheets;
using DxAssistant.Conversation.State;
using DxAssistant.Knowledge.Content;
using DxAssistant.Server.Chat;

namespace DxAssistant.Benchmarks.Load;

/// <summary>Takes turns one after another as the server does, stage by stage.</summary>
internal sealed class TurnStages(Library library, SqliteCaseStore store)
{
    private readonly Assistant assistant = new(library);
    private readonly TitleBook titles = TitleBook.Of(library);
    private int cases;

    /// <summary>Takes whole conversations.</summary>
    public StageTimes Take(ImmutableArray<ImmutableArray<RecordedTurn>> walks)
    {
        var times = new StageTimes();
        foreach (var walk in walks) Take(walk, times);
        return times;
    }

    private void Take(ImmutableArray<RecordedTurn> walk, StageTimes times)
    {
        string id = FormattableString.Invariant($"stages-{++cases}");
        var opening = assistant.Take(CaseState.New, new Message(CaseDesk.OpeningTurn, new MessageBody.Opening()));
        Append(id, 0, CaseDesk.OpeningTurn, opening);
        var state = opening.After!;
        long last = opening.Events.Length;
        foreach (var recorded in walk)
        {
            var message = times.Of("request", () => MessageOf(recorded));
            times.Of("mark", () => store.MarkAsync(id).GetAwaiter().GetResult());
            var turn = times.Of(message.Body is MessageBody.Words ? "work out words" : "work out taps",
                () => assistant.Take(state, message));
            var stored = times.Of("save", () => Append(id, last, recorded.TurnId, turn));
            var before = state;
            state = turn.After!;
            times.Of("answer",
                () => JsonSerializer.SerializeToUtf8Bytes(Taken(id, before, stored, turn), ChatJson.Options));
            last += stored.Length;
        }
    }

    private TurnTaken Taken(string id, CaseState before, ImmutableArray<StoredEvent> stored, Turn turn) => TurnTaken.Of(
        new DeskAnswer.Answered(id, turn.Reply, stored[0].Sequence - 1, stored[^1].Sequence, stored[^1].At, false),
        new TurnDone(before.LastReply?.Question, stored, turn.After!), titles);

    private ImmutableArray<StoredEvent> Append(string id, long last, string turnId, Turn turn) =>
        ((AppendResult.Appended)store.AppendAsync(id, last, turnId, turn.Events).GetAwaiter().GetResult()).Events;

    private static Message MessageOf(RecordedTurn turn)
    {
        using var json = JsonDocument.Parse(turn.Message);
        return AnswerReader.TryRead(json.RootElement, out var body, out string? problem)
            ? new Message(turn.TurnId, body) : throw new InvalidOperationException(problem);
    }
}
