using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>A reading that nobody asked for: what is to be done for it to count.</summary>
public sealed class EarlyReadingTests
{
    [Fact]
    public void Reading_OfACheckLeftOut_IsToBeNamed()
    {
        Walker walker = AtResistance();
        walker.Order(CommandWord.Skip);
        Assert.Equal(QuestionKind.Access, walker.Question.Kind);
        walker.Say("2.1k at 24C");
        Segment told = Assert.Single(walker.Reply.Segments,
            segment => segment.From.Contains(new Provenance.Phrase("notice-reading-left-out")));
        Assert.Contains("Resistance of the room air sensor", told.Text, StringComparison.Ordinal);
        walker.Say("resistance of the room air sensor 2.1k at 24C");
        Assert.Equal(QuestionKind.Told, walker.Question.Kind);
        walker.Tap(walker.Question.Options[0].Key);
        Assert.Contains(walker.State.Results, result => result.Check == "room-sensor-resistance");
    }

    [Fact]
    public void Reading_BeforeItsCheck_IsGivenAgainThen()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "room-sensor-code");
        walker.Say("2.1k at 24C");
        Assert.Single(walker.Reply.Segments,
            segment => segment.From.Contains(new Provenance.Phrase("notice-reading-early")));
    }

    private static Walker AtResistance()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "room-sensor-code")
            .MakeSafe();
        walker.Tap("home");
        Assert.Equal((QuestionKind.Check, "room-sensor-resistance"), (walker.Question.Kind, walker.Question.Subject));
        return walker;
    }
}
