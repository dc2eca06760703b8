using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>Who has a fault in mind may ask about it: how likely it is, what speaks for it and what against.</summary>
public sealed class WhyNotTests
{
    [Theory]
    [InlineData("why not the room air sensor", "sensor-room-air")]
    [InlineData("Why isn't it the indoor board?", "indoor-board-failed")]
    [InlineData("what about room air sensor failed", "sensor-room-air")]
    public void FaultInQuestion_IsWeighed(string words, string fault)
    {
        Walker walker = AtRoomSensor();
        OpenQuestion open = walker.Question;
        LedgerFigures ledger = Asked(walker, words);
        Assert.Equal(fault, ledger.Fault);
        Assert.InRange(ledger.Probability, 0.01, 0.99);
        Assert.Contains(ledger.Lines, line => line is { Kind: "symptom", Id: "room-sensor-code" });
        Assert.Equal((open.Kind, open.Subject), (walker.Question.Kind, walker.Question.Subject));
    }

    [Fact]
    public void Result_ThatClearsAFault_SpeaksAgainstIt()
    {
        Walker walker = AtRoomSensor().MakeSafe();
        walker.Tap("home");
        LedgerFigures ledger = Asked(walker, "why not sensor plug loose");
        Assert.True(Assert.Single(ledger.Lines, line => line.Kind == "check").Weight < 0);
        Assert.Contains(walker.Reply.Segments,
            segment => segment.Text.StartsWith("Against it: ", StringComparison.Ordinal)
            || segment.Text.StartsWith("Rules it out: ", StringComparison.Ordinal));
    }

    [Fact]
    public void RepairInVain_RulesItsFaultOut()
    {
        Walker walker = AtRoomSensor().MakeSafe();
        walker.Tap("loose");
        walker.Tap("done");
        walker.MakeSafe().Tap("no");
        LedgerFigures ledger = Asked(walker, "why not sensor plug loose");
        Assert.Equal(("sensor-plug-loose", 0d), (ledger.Fault, ledger.Probability));
        Assert.Contains(walker.Reply.Segments,
            segment => segment.Text == "Rules it out: Seat the sensor plug, which did not cure.");
    }

    // At a repair the ledger is told of each fault that came near, so that nobody takes the first for the only one.
    [Fact]
    public void Repair_Asked_TellsWhatSpeaksAgainstTheOthers()
    {
        Walker walker = AtRoomSensor().MakeSafe();
        walker.Tap("loose");
        Assert.Equal(QuestionKind.Repair, walker.Question.Kind);
        walker.Order(CommandWord.Why);
        LedgerFigures[] rivals = [.. walker.Reply.Segments.Select(segment => segment.Ledger).OfType<LedgerFigures>()];
        Assert.InRange(rivals.Length, 2, 3);
        Assert.DoesNotContain(rivals, ledger => ledger.Fault == "sensor-plug-loose");
        Assert.All(rivals, ledger => Assert.True(ledger.Lines.Single(line => line.Kind == "check").Weight < 0));
        Assert.True(
            walker.Reply.Segments.Count(segment =>
                segment.Text.StartsWith("Against it: ", StringComparison.Ordinal)) >= rivals.Length);
    }

    [Fact]
    public void Fault_OfNoSignTold_IsNotInQuestion()
    {
        Walker walker = AtRoomSensor();
        walker.Say("why not drain blocked");
        Assert.Contains(walker.Reply.Segments,
            segment => segment.From.Contains(new Provenance.Phrase("fault-no-sign")));
    }

    [Fact]
    public void NothingToldYet_IsAComplaintAsAnyOther()
    {
        Walker walker = new(ShippedContent.Assistant);
        walker.Send(new DxAssistant.Conversation.Messages.MessageBody.Opening());
        walker.Say("could it be the drain is blocked, water drips from the indoor unit");
        Assert.NotEmpty(walker.State.Symptoms);
    }

    [Fact]
    public void UnsafeWish_IsNoQuestionAboutAFault()
    {
        Walker walker = AtRoomSensor();
        walker.Say("why not bypass the float switch");
        Assert.DoesNotContain(walker.Reply.Segments, segment => segment.Ledger is not null);
        Assert.Contains(walker.Reply.Segments, segment => segment.Kind == SegmentKind.Refusal);
    }

    private static Walker AtRoomSensor() =>
        new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "room-sensor-code");

    private static LedgerFigures Asked(Walker walker, string words)
    {
        walker.Say(words);
        return Assert.Single(walker.Reply.Segments, segment => segment.Ledger is not null).Ledger!;
    }
}
