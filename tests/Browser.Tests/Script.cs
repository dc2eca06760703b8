using System.Collections.Immutable;
using DxAssistant.Cases;
using DxAssistant.Conversation;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;

namespace DxAssistant.Browser.Tests;

/// <summary>A core with a fixed script that shows every kind of segment, for tests of the page that no edit of the
/// content can break.</summary>
internal sealed class Script : IResponder
{
    public Turn Respond(ImmutableArray<CaseEvent> log, Message message)
    {
        var asked = log.OfType<Replied>().LastOrDefault()?.Reply.Question;
        int turns = log.OfType<Said>().Count() + 1;
        ImmutableArray<CaseEvent> happened = message.Body is MessageBody.Opening ? [new Opened("script")] : [];
        happened = happened.Add(new Said(message.TurnId, message.By, message.Body));
        var reply = Answer(asked, message.Body, turns);
        if (asked?.Kind == QuestionKind.Complaint && message.Body is MessageBody.Words words)
        {
            happened = happened.Add(new SymptomReported("compressor-not-starting", 1, words.Text));
        }

        return new Turn(happened.Add(new Replied(reply)), reply);
    }

    private static Reply Answer(OpenQuestion? asked, MessageBody body, int turns)
    {
        if (asked is null) return ScriptPages.Opening(turns);
        string? named = (body as MessageBody.Choice)?.Question ?? (body as MessageBody.Readings)?.Question
            ?? (body as MessageBody.Words)?.Question;
        if (named is not null && named != asked.Id) return ScriptPages.Again(asked, turns, ScriptPages.Stale);
        if (body is MessageBody.Command { Word: CommandWord.StartOver }) return ScriptPages.Opening(turns);
        if (body is MessageBody.Command) return ScriptPages.Again(asked, turns, ScriptPages.Why);
        return asked.Kind switch
        {
            QuestionKind.Complaint => ScriptPages.Step(turns, 1),
            QuestionKind.Access when asked.Subject == "1" => ScriptPages.Step(turns, 2),
            QuestionKind.Access => ScriptPages.Windings(turns),
            QuestionKind.Check => ScriptPages.Found(turns),
            QuestionKind.Repair => ScriptPages.Verify(turns),
            _ => ScriptPages.Closed(turns),
        };
    }
}
