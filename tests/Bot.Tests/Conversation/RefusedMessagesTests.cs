using DxAssistant.Conversation.Replies;
using DxAssistant.Knowledge.Search;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>What a refused message complains of besides.</summary>
public sealed class RefusedMessagesTests
{
    private const string InCase = "In case you mean this:";
    private readonly Walker walker = new(ShippedContent.Assistant);

    // A complaint put as a request may only sound like a danger: it is not lost.
    [Fact]
    public void Complaint_RefusedByLikenessAlone_IsAskedForAfterTheAnswer()
    {
        const string said =
            "can i get it to stop dripping, the tray is full and theres green slime at the mouth of the hose";
        Assert.True(Matcher.For(ShippedContent.Library).Match(said).IsByLikeness);
        walker.Say("tarn duo");
        walker.Say("technician");
        Reply reply = walker.Say(said);
        Assert.Contains(reply.Segments, segment => segment.Text == InCase);
        Assert.Contains(reply.Segments, segment => segment.Kind == SegmentKind.Refusal);
        Assert.Contains(walker.Question.Options, option => option.Key == "water-dripping-indoor");
    }

    [Fact]
    public void Order_OfSomethingDangerous_IsRefusedAndNothingElse()
    {
        walker.Say("tarn duo");
        walker.Say("technician");
        Reply reply = walker.Say("how do i jump out the float switch");
        Assert.DoesNotContain(reply.Segments, segment => segment.Text == InCase);
        Assert.Contains(reply.Segments, segment => segment.Kind == SegmentKind.Refusal);
        Assert.Equal(QuestionKind.Complaint, walker.Question.Kind);
    }
}
