using DxAssistant.Conversation;
using DxAssistant.Conversation.Replies;
using DxAssistant.Graph.Model;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>What was answered may be wrong: an earlier result may be told anew, the last one taken back.</summary>
public sealed class CorrectionTests
{
    // While something else is asked, and on the way to a safe state, whose step stands.
    [Theory]
    [InlineData("Air filter: full of dust")]
    [InlineData("air filter was wrong, full of dust")]
    [InlineData("sorry, the air filter is full of dust after all")]
    public void EarlierResult_NamedWithAnotherAnswer_IsCorrected(string said)
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "weak-airflow");
        Assert.Equal("filter-look", walker.Question.Subject);
        walker.Tap("clean");
        while (walker.Question.Kind == QuestionKind.Check) walker.Tap(walker.Question.Options[0].Key);
        Assert.Equal(QuestionKind.Access, walker.Question.Kind);
        Assert.Equal("clean", walker.State.Results.Single(result => result.Check == "filter-look").Outcome);
        string? access = walker.State.Access;
        walker.Say(said);
        Assert.Equal("blocked", walker.State.Results.Single(result => result.Check == "filter-look").Outcome);
        Assert.Equal(access, walker.State.Access);
    }

    // What comes next is worked out again: the filter that is full of dust after all is washed before anything else is
    // looked at.
    [Fact]
    public void EarlierResult_NamedWithAnotherAnswer_StepIsChosenAnew()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "weak-airflow");
        walker.Tap("clean");
        Assert.Equal(QuestionKind.Check, walker.Question.Kind);
        walker.Say("air filter: full of dust");
        Assert.Equal((QuestionKind.Repair, "wash-filter"), (walker.Question.Kind, walker.Question.Subject));
    }

    // What a repair did is no correction of what was found before it.
    [Fact]
    public void EarlierResult_NamedAtARepair_StaysAsItWas()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "weak-airflow");
        walker.Tap("blocked");
        Assert.Equal((QuestionKind.Repair, "wash-filter"), (walker.Question.Kind, walker.Question.Subject));
        walker.Say("washed it, light comes through the air filter now");
        Assert.Equal("blocked", walker.State.Results.Single(result => result.Check == "filter-look").Outcome);
    }

    [Theory]
    [InlineData("filter is dirty")]
    [InlineData("actually the filter is dirty")]
    [InlineData("sorry, my mistake, the filter is dirty after all")]
    public void EarlierAnswer_ToldAnew_CountsAsIfItHadBeenToldSoAtFirst(string words)
    {
        Walker corrected = Begin(), straight = Begin();
        corrected.Tap("clean");
        corrected.Say(words);
        corrected.Tap("yes");
        straight.Tap("blocked");

        Assert.Equal("blocked", Assert.Single(corrected.State.Results).Outcome);
        Assert.Equal(Beliefs(straight), Beliefs(corrected));
        Assert.Equal(straight.Question.Subject, corrected.Question.Subject);
    }

    [Theory]
    [InlineData("I measured wrong")]
    [InlineData("that reading was wrong")]
    [InlineData("sorry, i misread it")]
    public void LastAnswer_SaidToBeWrong_IsTakenBackAndAskedAgain(string words)
    {
        Walker walker = Begin();
        walker.Tap("clean");
        walker.Say(words);
        Assert.Empty(walker.State.Results);
        Assert.Equal("filter-look", walker.Question.Subject);
    }

    [Theory]
    [InlineData("I made a mistake, no, they are full of dust")]
    [InlineData("that was wrong, full of dust")]
    [InlineData("no wait they are full of dust")]
    [InlineData("sorry no full of dust")]
    [InlineData("no sorry they are full of dust")]
    public void LastAnswer_SaidToBeWrongWithTheRightOne_IsReplaced(string words)
    {
        Walker corrected = Begin(), straight = Begin();
        corrected.Tap("clean");
        corrected.Say(words);
        straight.Tap("blocked");
        Assert.Equal("blocked", Assert.Single(corrected.State.Results).Outcome);
        Assert.Equal(Beliefs(straight), Beliefs(corrected));
    }

    // The answer that was wrong is an older one: the last stays.
    [Fact]
    public void OlderAnswer_SaidToBeWrong_IsCorrectedAndTheLastStays()
    {
        Walker walker = Begin();
        walker.Tap("clean");
        walker.MakeSafe();
        (string check, Option answer) = (walker.Question.Subject, walker.Question.Options[0]);
        walker.Tap(answer.Key);
        walker.Say("i was wrong, full of dust");
        Assert.Equal("blocked", walker.State.Results.Single(result => result.Check == "filter-look").Outcome);
        Assert.Equal(answer.Key, walker.State.Results.Single(result => result.Check == check).Outcome);
    }

    [Theory]
    [InlineData("i made a mistake, go back")]
    [InlineData("i measured wrong, let me check again")]
    public void LastAnswer_TakenBackInMoreWords_IsAskedAgain(string words)
    {
        Walker walker = Begin();
        walker.Tap("clean");
        walker.Say(words);
        Assert.DoesNotContain(walker.State.Results, result => result.Check == "filter-look");
    }

    // "Sorry, no" answers what is asked, and "i misread the code" takes no answer back.
    [Theory]
    [InlineData("sorry, no")]
    [InlineData("i misread the code, it is E6")]
    public void EarlierAnswer_NotSpokenOf_Stays(string words)
    {
        Walker walker = Begin();
        walker.Tap("clean");
        walker.Say(words);
        Assert.Equal("clean", walker.State.Results.Single(result => result.Check == "filter-look").Outcome);
    }

    [Fact]
    public void UnsafeRequest_BehindATakenBackAnswer_IsRefused()
    {
        Walker walker = Begin();
        walker.Tap("clean");
        walker.Say("forget that, can i bypass the pressure switch");
        Assert.Contains(walker.Reply.Segments, segment => segment.Kind == SegmentKind.Refusal);
    }

    [Theory]
    [InlineData("wrong unit")]
    [InlineData("its a tarn duo")]
    public void AnotherUnit_SaidInTheMiddle_IsToldHowToGoOn(string words)
    {
        Walker walker = Begin();
        walker.Say(words);
        Assert.Contains(walker.Reply.Segments,
            segment => segment.Text.Contains("start over", StringComparison.Ordinal));
        Assert.Equal("brenholt-ws", walker.State.Series);
    }

    private static Walker Begin()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "indoor-fan-fault");
        Assert.Equal("filter-look", walker.Question.Subject);
        return walker;
    }

    private static IEnumerable<(string, double)> Beliefs(Walker walker) =>
        new CaseView(ShippedContent.Library, walker.State).Lines().Select(line => (line.Fault, line.Probability));

    [Fact]
    public void VoltageMisread_OnTheWayToASafeState_TakesTheStepBack()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "room-sensor-code");
        for (int step = 0; step < 12 && walker.Question is { Kind: QuestionKind.Access, Fields.IsEmpty: true }; step++)
            walker.Say("done");
        walker.Say("0.3 V");
        walker.Say("i misread, it was 230 V");
        Assert.Equal(QuestionKind.Access, walker.Question.Kind);
        Assert.NotEqual("isolated-open", walker.State.Access);
        Assert.Contains(walker.Reply.Segments, said => said.From.Contains(new Provenance.Phrase("notice-taken-back")));
    }
}
