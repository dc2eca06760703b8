using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Told;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>
/// What people say in the middle of a walk that asks for nothing unsafe is not refused, and what they complain of is
/// not lost.
/// </summary>
public sealed class HarmlessTalkTests
{
    [Theory]
    [InlineData("should i turn it off", "answer-off")]
    [InlineData("should we shut it down", "answer-off")]
    [InlineData("can I turn the ac off?", "answer-off")]
    [InlineData("do you want me to switch it off or leave it on", "answer-off")]
    [InlineData("should i reset the breaker", "answer-reset")]
    [InlineData("should I leave it running", "answer-run-on")]
    [InlineData("can I keep using it", "answer-run-on")]
    [InlineData("is it ok to use it until you come", "answer-run-on")]
    [InlineData("is it safe to keep it on overnight", "answer-run-on")]
    [InlineData("do I leave it on or off", "answer-run-on")]
    [InlineData("is it under warranty", "answer-warranty")]
    [InlineData("does the warranty cover this", "answer-warranty")]
    [InlineData("i'll go check", "notice-take-your-time")]
    [InlineData("i'll have to ask the customer", "notice-take-your-time")]
    [InlineData("hold on", "notice-take-your-time")]
    [InlineData("not yet", "notice-take-your-time")]
    public void Aside_AtAStep_IsAnsweredAndTheQuestionStaysOpen(string words, string phrase)
    {
        Walker walker = AtStep();
        string step = walker.Question.Subject;
        Reply reply = walker.Say(words);
        Assert.Contains(reply.Segments, segment => segment.From.Contains(new Provenance.Phrase(phrase)));
        Assert.DoesNotContain(reply.Segments, segment => segment.Kind == SegmentKind.Refusal);
        Assert.Equal(step, walker.Question.Subject);
    }

    [Theory]
    [InlineData("should i turn it off and open the cover")]
    [InlineData("can i bypass the float switch")]
    [InlineData("should i turn it off, i smell burning")]
    [InlineData("can i keep using it with the cover off")]
    [InlineData("can i leave it on, it sparks a bit")]
    [InlineData("is it ok to use it while water drips on the plug")]
    public void Aside_WithSomethingUnsafeBeside_IsNoHarmlessQuestion(string words) =>
        Assert.DoesNotContain(AtStep().Say(words).Segments, segment => segment.From.OfType<Provenance.Phrase>()
            .Any(phrase => phrase.Id.StartsWith("answer-", StringComparison.Ordinal)));

    [Fact]
    public void Reset_AfterTheBreakerIsToStayOff_IsNotAllowedOnceMore()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "owner", "unit-dead");
        for (int turn = 0; turn < 10
            && walker.Question is { Kind: QuestionKind.Check, Subject: not "breaker-once" }; turn++)
            walker.Tap(walker.Question.Subject == "danger-signs" ? "none" : walker.Question.Options[^1].Key);
        Assert.Equal("breaker-once", walker.Question.Subject);
        Assert.Contains(walker.Say("can i reset the breaker").Segments,
            segment => segment.From.Contains(new Provenance.Phrase("answer-reset")));
        walker.Tap("trips");
        foreach (string asked in new[] { "is it safe to flip the breaker back on", "can i reset the breaker" })
        {
            Reply reply = walker.Say(asked);
            Assert.Contains(reply.Segments, segment => segment.From.Contains(new Provenance.Phrase("answer-stay-off")));
            Assert.DoesNotContain(reply.Segments,
                segment => segment.From.Contains(new Provenance.Phrase("answer-reset")));
        }
    }

    [Theory]
    [InlineData("hiss", "closed-stop-gas")]
    [InlineData("burning", "answer-stay-off")]
    [InlineData("wet", "answer-stay-off")]
    public void RunOn_AfterASignOfDanger_IsToStayOff(string sign, string phrase)
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "owner", "poor-cooling");
        walker.Tap(sign);
        Reply reply = walker.Say("can i keep using it until you come");
        Assert.Contains(reply.Segments, segment => segment.From.Contains(new Provenance.Phrase(phrase)));
        Assert.DoesNotContain(reply.Segments, segment => segment.From.Contains(new Provenance.Phrase("answer-run-on")));
    }

    [Fact]
    public void RunOn_ABreakerThatTrips_IsToStayOff()
    {
        Walker walker = new(ShippedContent.Assistant);
        walker.Say("it trips the breaker every time");
        Reply reply = walker.Say("can she use it tomorrow");
        Assert.Contains(reply.Segments, segment => segment.From.Contains(new Provenance.Phrase("answer-stay-off")));
    }

    [Fact]
    public void OffTheSubject_TwiceAtAMenu_NamesTheAnswersTheSecondTime()
    {
        Walker walker = new Walker(ShippedContent.Assistant);
        walker.Say("not cooling");
        Reply first = walker.Say("who won the football");
        Reply second = walker.Say("how is the weather today");
        Assert.Contains(first.Segments, segment => segment.Kind == SegmentKind.Refusal);
        Assert.Contains(second.Segments, segment =>
            segment.From.Contains(new Provenance.Phrase("notice-choose-again")));
        Assert.True(
            second.Segments.Count(segment => segment.Kind == SegmentKind.Refusal) < first.Segments.Count(
                segment => segment.Kind == SegmentKind.Refusal));
    }

    [Theory]
    [InlineData("can i skip this")]
    [InlineData("i want to skip this one")]
    public void Command_AskedFor_IsObeyed(string words)
    {
        Walker walker = AtStep();
        string step = walker.Question.Subject;
        walker.Say(words);
        Assert.Contains(step, walker.State.PassedOver.Keys);
    }

    [Theory]
    [InlineData("can i bypass the float switch")]
    [InlineData("i want to measure on the board with the power on")]
    public void Refusal_ToAnOwner_GivesNoStepOfATechnician(string words)
    {
        Reply reply = AtStep().Say(words);
        string[] said =
            [.. reply.Segments.Where(segment => segment.Kind == SegmentKind.Refusal).Select(segment => segment.Text)];
        Assert.NotEmpty(said);
        Assert.DoesNotContain(said, text => text.Contains("measure", StringComparison.OrdinalIgnoreCase)
            || text.Contains("lock", StringComparison.OrdinalIgnoreCase)
            && !text.StartsWith("I will not", StringComparison.Ordinal));
    }

    [Fact]
    public void Refusal_WhoSaysToBeTheOwnerBesideIt_GetsTheOwnersWay()
    {
        var walker = new Walker(ShippedContent.Assistant);
        Reply reply = walker.Say("im the homeowner, can i bypass the float switch");
        Assert.Contains(reply.Segments, segment =>
            segment.Text == ShippedContent.Library.Refusals["defeat-protection"].OwnersWay[0].Text);
    }

    // Each page whose safe way is a technician's says what an owner does.
    [Fact]
    public void Refusal_WithATechniciansWay_HasAnOwnersWay() =>
        Assert.All(
            ShippedContent.Library.Refusals.Values.Where(page => page.Unsafe
                && page.SafeWay.Any(way => way.Text.Contains("easure", StringComparison.Ordinal)
                    || way.Text.Contains("licence recovers", StringComparison.Ordinal))),
            page => Assert.NotEmpty(page.OwnersWay));

    [Theory]
    [InlineData("breaker keeps tripping, i reset it and it tripped again")]
    [InlineData("the breaker tripped again what do i do")]
    [InlineData("breaker tripped again")]
    public void Complaint_BesideARequest_IsNotLost(string words)
    {
        var walker = new Walker(ShippedContent.Assistant);
        walker.Say(words);
        Assert.Equal("trips-breaker", walker.State.Symptoms.Select(known => known.Symptom)
            .Concat(walker.State.Unconfirmed.Select(item => item.Thing).OfType<ToldThing.Symptom>()
                .Select(told => told.Id)).Single());
    }

    [Fact]
    public void Complaint_BesideARefusalInTheMiddle_IsAskedAbout()
    {
        Walker walker = AtStep();
        walker.Say("i reset the breaker and it tripped again");
        Assert.Equal(QuestionKind.Symptom, walker.Question.Kind);
        Assert.Contains(walker.Question.Options, option => option.Key == "trips-breaker");
    }

    [Theory]
    [InlineData("it leaks water and makes a loud noise", "water-dripping-indoor", "noise-indoor")]
    [InlineData("it smells bad and does not cool", "smell", "poor-cooling")]
    [InlineData("no heat and water dripping inside", "poor-heating", "water-dripping-indoor")]
    public void TwoComplaints_JoinedByAnd_AreBothHeard(string words, string first, string second)
    {
        var walker = new Walker(ShippedContent.Assistant);
        walker.Say(words);
        string[] told = [.. walker.State.Unconfirmed.Select(item => item.Thing).OfType<ToldThing.Symptom>()
            .Select(symptom => symptom.Id)];
        Assert.Contains(first, told);
        Assert.Contains(second, told);
    }

    [Theory]
    [InlineData("it starts and stops")]
    [InlineData("the fan runs and blows warm air")]
    public void OneComplaint_WithAnAndInIt_StaysOne(string words)
    {
        var walker = new Walker(ShippedContent.Assistant);
        walker.Say(words);
        Assert.Empty(walker.State.Unconfirmed);
    }

    private static Walker AtStep()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "owner", "poor-cooling");
        walker.Tap("none");
        return walker;
    }
}
