using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Told;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>
/// What gauges or a meter show is no complaint: told first, it is said back and kept, and the trouble is asked for.
/// </summary>
public sealed class FirstFindingTests
{
    private readonly Walker walker = new(ShippedContent.Assistant);

    [Theory]
    [InlineData("head 42 bar at 30 outside", "42 bar")]
    [InlineData("compressor windings 1.1, 1.1, 1.12", "1.1")]
    public void Readings_ToldFirst_AreSaidBackAndTheTroubleIsAskedFor(string said, string figure)
    {
        walker.Say(said);
        Assert.Equal(QuestionKind.Complaint, walker.Question.Kind);
        Assert.Contains(walker.Reply.Segments, segment => segment.Kind == SegmentKind.Understood
            && segment.Text.Contains(figure, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("brenholt", "high side 42 bar, 30 outside")]
    [InlineData("tarn duo", "head 42 bar at 30 outside")]
    public void Readings_ToldBeforeTheTrouble_AreConfirmedWithIt(string unit, string said)
    {
        walker.Say(unit);
        walker.Say("technician");
        walker.Say(said);
        walker.Say("not cooling well");
        Assert.Equal(QuestionKind.Told, walker.Question.Kind);
        walker.Say("yes");
        Assert.Equal("high-side-pressure", Assert.Single(walker.State.Results).Check);
    }

    [Theory]
    [InlineData("head 42 bar")]
    [InlineData("high side 600 psi, 86 outside")]
    public void Readings_ThatAreNotClear_AreSaidToBeNotUsedAndNoComplaint(string said)
    {
        walker.Say(said);
        Assert.Equal(QuestionKind.Complaint, walker.Question.Kind);
        Assert.Contains(walker.Reply.Segments, segment => segment.From.Contains(
            new Provenance.Phrase("notice-reading-early")) || segment.From.Contains(
            new Provenance.Phrase("notice-not-used")));
    }

    // A "high pressure" is what a display or a switch says; "pressures" are read on gauges: common practice, no source.
    [Theory]
    [InlineData("pressures are high", "high-side-pressure", "high")]
    [InlineData("both pressures look high on the gauges", "high-side-pressure", "high")]
    [InlineData("head pressures are way high", "high-side-pressure", "high")]
    [InlineData("head pressure is high", "high-side-pressure", "high")]
    [InlineData("pressures are low", "suction-pressure", "low")]
    [InlineData("subcooling is low", "subcooling", "low")]
    public void GaugeTalk_ToldFirst_IsKeptAndNoComplaint(string said, string check, string outcome)
    {
        walker.Say(said);
        Assert.Equal(QuestionKind.Complaint, walker.Question.Kind);
        Assert.Empty(walker.State.Symptoms);
        Assert.Equal(new ToldThing.Outcome(check, outcome, false), Assert.Single(walker.State.Unconfirmed).Thing);
    }

    [Theory]
    [InlineData("high pressure", "high-pressure-code")]
    [InlineData("indoor fan is not turning", "indoor-fan-not-turning")]
    public void Trouble_ToldFirst_IsStillTheComplaint(string said, string symptom)
    {
        walker.Say(said);
        Assert.Equal(symptom, Assert.Single(walker.State.Symptoms).Symptom);
    }
}
