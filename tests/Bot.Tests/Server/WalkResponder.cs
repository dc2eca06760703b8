using System.Collections.Immutable;
using DxAssistant.Cases;
using DxAssistant.Conversation;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;

namespace DxAssistant.Bot.Tests.Server;

/// <summary>A core that asks a yes-or-no question with a field, and says back what it was given.</summary>
internal sealed class WalkResponder : IResponder
{
    public Turn Respond(ImmutableArray<CaseEvent> log, Message message)
    {
        string given = message.Body switch
        {
            MessageBody.Words { Question: { } named } words => $"{words.Text} to {named}",
            MessageBody.Words words => words.Text,
            MessageBody.Choice choice => $"choice {choice.Key} of {choice.Question}",
            MessageBody.Readings readings => string.Join(" ", readings.Fields.Select(f => $"{f.Label}={f.Words}")),
            MessageBody.Command command => command.Word.ToString(),
            _ => "nothing",
        };
        var question = new OpenQuestion(
            $"q{log.Length}", QuestionKind.Check, "fan", "Does the fan turn?", [],
            [new Option("yes", "Yes"), new Option("no", "No")],
            [new Field("U–V", "Ω", "Leads on U and V", null)], [CommandWord.Back, CommandWord.Skip]);
        var reply = new Reply(
            [new Segment(SegmentKind.Understood, $"Given: {given}", [new Provenance.Person()]),
             new Segment(
                 SegmentKind.Caution, "The fan may start.", [new Provenance.Page("cautions/fan.md", "Rotating fan")])],
            question, [new BeliefLine("motor", "Fan motor failed", 0.7)], "closed-running");
        ImmutableArray<CaseEvent> events = [new Said(message.TurnId, message.By, message.Body)];
        if (message.Body is MessageBody.Words said) events = events.Add(new SymptomReported("fan", 1, said.Text));
        return new Turn(events.Add(new Replied(reply)), reply);
    }
}
