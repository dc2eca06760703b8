using System.Globalization;
using DxAssistant.Bot.Tests.Conversation;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Sheets;
using DxAssistant.Conversation.State;
using DxAssistant.Server.Channels;

namespace DxAssistant.Bot.Tests.Fuzzing;

/// <summary>
/// Whatever people say in one of the questions of a walk, so that answers, forms and first words are all met.
/// </summary>
internal sealed class MessageFuzz() : FuzzPart("messages", 300, Answer)
{
    private const int MostTurns = 14;

    private static readonly Lazy<CaseState[]> Standing = new(() => [.. States()]);

    public override Task<IEnumerable<string>> BeginAsync() =>
        Task.FromResult(Knowing.Said("match-dev").Where((_, at) => at % 8 == 0).Take(100)
            .Concat(Knowing.Said("readings").Take(20)));

    private static string Answer(string text)
    {
        int standing = text.Length % Standing.Value.Length;
        if (!SaidWords.TryRead(text, out var body, out _)) return "not read";
        var turn = ShippedContent.Assistant.Take(Standing.Value[standing], new Message("fuzz", body));
        Assert.NotNull(turn.Reply.Question);
        Assert.All(turn.Reply.Segments, segment => Assert.NotEmpty(segment.From));
        Assert.NotEmpty(PlainReply.Lines(turn.Reply));
        var after = Fold.Apply(Standing.Value[standing], turn.Events);
        return $"{standing} {string.Join(' ', turn.Events.Select(happened => happened.GetType().Name))} {after.Question?.Kind}";
    }

    private static IEnumerable<CaseState> States()
    {
        var walker = new Walker(ShippedContent.Assistant);
        walker.Send(new MessageBody.Opening());
        for (int turn = 0; turn < MostTurns; turn++)
        {
            yield return walker.State;
            if (turn == 0) walker.Say("indoor fan does not turn");
            else if (walker.Question is { Fields.IsEmpty: true, Options.IsEmpty: true }) yield break;
            else if (walker.Question.Fields.IsEmpty) walker.Tap(walker.Question.Options[^1].Key);
            else walker.Fill(
                [.. walker.Question.Fields.Select(
                    field => (field.Label, string.Create(CultureInfo.InvariantCulture, $"{turn} {field.Unit}")))]);
        }
    }
}
