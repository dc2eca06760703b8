using System.Collections.Immutable;
using DxAssistant.Cases;
using DxAssistant.Conversation;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;

namespace DxAssistant.Bot.Tests.Cases;

/// <summary>A core that only says back what was said, for tests of what is around it.</summary>
internal sealed class EchoResponder : IResponder
{
    public int Asked { get; private set; }

    public Action<ImmutableArray<CaseEvent>> WhenAsked { get; set; } = _ => { };

    public Turn Respond(ImmutableArray<CaseEvent> log, Message message)
    {
        Asked++;
        WhenAsked(log);
        string text = message.Body is MessageBody.Words words ? $"You said {words.Text}." : "You said nothing yet.";
        var reply = new Reply([new Segment(SegmentKind.Understood, text, [new Provenance.Person()])], null, [], null);
        return new Turn([new Said(message.TurnId, message.By, message.Body), new Replied(reply)], reply);
    }
}
