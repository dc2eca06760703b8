using DxAssistant.Conversation;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.State;
using DxAssistant.Conversation.Told;
using DxAssistant.Graph.Model;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>Leaking gas, smelt or told by an alarm: no flame, no switch, out.</summary>
public sealed class GasDangerTests
{
    private const string Gas = "light no flame and touch no switch";

    [Fact]
    public void Gas_IsNeverToldToUseASwitch()
    {
        Walker walker = Opened();
        walker.Say("gas smell");
        Assert.DoesNotContain(walker.Reply.Segments,
            segment => segment.Text.Contains("switch the unit off", StringComparison.Ordinal));
        walker.Tap("owner");
        Assert.Equal(QuestionKind.Closed, walker.Question.Kind);
    }

    [Theory]
    [InlineData("tarn duo shows 88 flashing")]
    [InlineData("veldarn controller shows L0")]
    public void LeakAlarmCode_Owner_IsToldAtOnceAndTheWalkEnds(string words)
    {
        Walker walker = Opened();
        walker.Say(words);
        Assert.Contains(walker.Reply.Segments, segment => segment.Text.Contains(Gas, StringComparison.Ordinal));
        walker.Tap("owner");
        Assert.Equal(QuestionKind.Closed, walker.Question.Kind);
    }

    [Fact]
    public void LeakAlarmCode_Technician_IsWarnedOnceAndTheAlarmCountsOnce()
    {
        Walker walker = Opened();
        walker.Say("tarn duo shows 88 flashing");
        Reply next = walker.Tap("technician");
        Assert.DoesNotContain(next.Segments, segment => segment.Text.Contains(Gas, StringComparison.Ordinal));
        Assert.NotEqual(QuestionKind.Closed, walker.Question.Kind);
        Assert.Equal(LeakAfter(walker.State with { Results = [] }), LeakAfter(walker.State), tolerance: 1e-9);
    }

    private static double LeakAfter(CaseState state) =>
        new CaseView(ShippedContent.Library, state).Belief.ProbabilityOf(new FaultId("undercharge-leak"));

    // A condensate pump sounds its own alarm, for water. Common practice, no source.
    [Theory]
    [InlineData("the condensate pump alarm is beeping")]
    [InlineData("condensate pump alarm is beeping")]
    [InlineData("the float alarm is beeping")]
    [InlineData("the little box next to the unit beeps")]
    [InlineData("the pump is beeping")]
    [InlineData("pump alarm beeping")]
    [InlineData("the pump alarm keeps beeping")]
    [InlineData("water alarm going off")]
    [InlineData("float alarm going off")]
    [InlineData("condensate alarm is going off")]
    public void Alarm_OfThePump_IsNoGas(string words)
    {
        Walker walker = Opened();
        walker.Say(words);
        Assert.DoesNotContain(walker.Reply.Segments, segment => segment.Text.Contains(Gas, StringComparison.Ordinal));
        Assert.Empty(walker.State.Results);
        Assert.DoesNotContain(walker.State.Unconfirmed, item => item.Thing is ToldThing.Outcome);
    }

    [Theory]
    [InlineData("the gas alarm is beeping")]
    [InlineData("the heat pump alarm is going off")]
    [InlineData("heat pump alarm beeping")]
    [InlineData("alarm beeping")]
    [InlineData("leak alarm")]
    [InlineData("gas detector beeping")]
    [InlineData("pump alarm beeping and the gas alarm is going off")]
    [InlineData("the pump alarm is going off")]
    [InlineData("an alarm on the pump is beeping")]
    [InlineData("the alarm is going off")]
    [InlineData("the gas alarm on the pump is beeping")]
    [InlineData("the condensate pump alarm is going off and the gas alarm is beeping")]
    public void Alarm_OfGas_IsStillHeard(string words)
    {
        Walker walker = Opened();
        walker.Say(words);
        Assert.Contains(walker.Reply.Segments, segment => segment.Text.Contains(Gas, StringComparison.Ordinal));
    }

    [Fact]
    public void Gas_BesideBurning_IsAnsweredWithoutASwitch()
    {
        Walker walker = Opened();
        walker.Say("gas smell and a burning smell");
        Assert.Contains(walker.Reply.Segments, segment => segment.Text.Contains(Gas, StringComparison.Ordinal));
        Assert.DoesNotContain(walker.Reply.Segments,
            segment => segment.Text.Contains("switch the unit off", StringComparison.Ordinal));
    }

    // To switch off where gas may be is wrong, and so is to speak of brazing to who smells it.
    [Theory]
    [InlineData("i can smell gas")]
    [InlineData("theres a smell of gas near the heat pump what do i do")]
    public void Gas_SmeltByAnybody_IsAnsweredWithoutARefusal(string words)
    {
        Walker walker = Opened();
        walker.Say(words);
        Assert.DoesNotContain(walker.Reply.Segments, segment => segment.Kind == SegmentKind.Refusal);
    }

    private static Walker Opened()
    {
        var walker = new Walker(ShippedContent.Assistant);
        walker.Send(new MessageBody.Opening());
        return walker;
    }

    // Which unit it is and who asks is confirmed after the caution, not before.
    [Fact]
    public void LeakAlarmCode_WithAUnitNotConfirmed_IsWarnedOfAtOnce()
    {
        var walker = new Walker(ShippedContent.Assistant);
        walker.Send(new MessageBody.Opening());
        walker.Say("im on the phone with a customer, tarn duo");
        walker.Say("88 flashing on the wall");
        Assert.Equal(QuestionKind.Told, walker.Question.Kind);
        Assert.Contains(walker.Reply.Segments, segment => segment.Text.Contains(Gas, StringComparison.Ordinal));
    }
}
