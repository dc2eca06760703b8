using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Told;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>A doubt with which a sentence begins is of all that it tells, until it says that it is sure.</summary>
public sealed class ToldWithDoubtTests
{
    [Theory]
    [InlineData("not sure but the filter is clean and the outdoor coil is clean")]
    [InlineData("dont quote me but filter clean, outdoor coil clean")]
    [InlineData("from memory, filter clean, outdoor coil clean")]
    public void Findings_BehindADoubtOfAll_AreDoubtful(string said)
    {
        Walker walker = Told(said);
        Assert.True(Outcome(walker, "filter-look").Doubtful);
        Assert.True(Outcome(walker, "outdoor-coil-look").Doubtful);
    }

    [Theory]
    [InlineData("not sure but the filter is clean, outdoor coil definitely clean")]
    [InlineData("not sure but the filter is clean. outdoor coil clean")]
    [InlineData("i think the filter is clean, outdoor coil clean")]
    public void Findings_SaidToBeSureOrInAnotherSentence_AreNotDoubtful(string said)
    {
        Walker walker = Told(said);
        Assert.True(Outcome(walker, "filter-look").Doubtful);
        Assert.False(Outcome(walker, "outdoor-coil-look").Doubtful);
    }

    [Fact]
    public void Findings_BeforeADoubtAtTheEnd_LeaveTheNextOneSure() =>
        Assert.False(Outcome(Told("filter clean as far as i know, outdoor coil clean"), "outdoor-coil-look").Doubtful);

    [Fact]
    public void Readings_BehindADoubtOfAll_CountLess()
    {
        Walker walker = Told("not sure but head was 42 bar at 30 outside");
        Assert.True(Assert.Single(walker.State.Unconfirmed.Select(item => item.Thing).OfType<ToldThing.Measured>())
            .Doubtful);
        walker.Say("yes");
        Assert.Contains(walker.Reply.Segments,
            segment => segment.From.Contains(new Provenance.Phrase("notice-reading-doubted")));
    }

    [Fact]
    public void Complaint_BehindADoubtOfAll_CountsLess()
    {
        var walker = new Walker(ShippedContent.Assistant);
        walker.Say("not sure but the filter is clean, it is not cooling");
        Assert.Contains(walker.State.Unconfirmed, item => item.Thing is ToldThing.Symptom { Confidence: < 1 });
    }

    private static ToldThing.Outcome Outcome(Walker walker, string check) => walker.State.Unconfirmed
        .Select(item => item.Thing).OfType<ToldThing.Outcome>().Single(outcome => outcome.Check == check);

    private static Walker Told(string said)
    {
        var walker = new Walker(ShippedContent.Assistant);
        walker.Say("ostvik duct");
        walker.Say("technician");
        walker.Say($"not cooling well. {said}");
        return walker;
    }
}
