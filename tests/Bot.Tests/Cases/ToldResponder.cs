using System.Collections.Immutable;
using DxAssistant.Cases;
using DxAssistant.Conversation;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.State;

namespace DxAssistant.Bot.Tests.Cases;

/// <summary>A core that says back what was said and shows what it knew of the case when it was asked.</summary>
internal sealed class ToldResponder : IStandingResponder
{
    /// <summary>The reply it was told to have given last.</summary>
    public string Known { get; private set; } = "";

    public Turn Respond(ImmutableArray<CaseEvent> log, Message message) =>
        Respond(Fold.Apply(CaseState.New, log), message);

    public Turn Respond(CaseState state, Message message)
    {
        Known = string.Concat(state.LastReply?.Segments.Select(segment => segment.Text) ?? []);
        string said = message.Body is MessageBody.Words words ? words.Text : "";
        string text = said.StartsWith("and", StringComparison.Ordinal) ? Known : said;
        var reply = new Reply([new Segment(SegmentKind.Understood, text, [new Provenance.Person()])], null, [], null);
        return new Turn([new Said(message.TurnId, message.By, message.Body), new Replied(reply)], reply);
    }
}
