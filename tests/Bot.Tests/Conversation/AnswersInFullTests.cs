using DxAssistant.Conversation;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.State;
using DxAssistant.Graph.Model;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>Answers in more words than those of the buttons are answers all the same.</summary>
public sealed class AnswersInFullTests
{
    [Theory]
    [InlineData("no it stays silent", "no")]
    [InlineData("nope it won't move", "no")]
    [InlineData("no, nothing happens", "no")]
    [InlineData("no it just stands there dead", "no")]
    [InlineData("nah it does not turn at all", "no")]
    [InlineData("no, not moving", "no")]
    [InlineData("yes it spins", "yes")]
    [InlineData("yep it runs", "yes")]
    public void YesOrNo_GoingOnAlike_IsTheAnswer(string said, string begins)
    {
        Walker walker = At("outdoor-fan-turns");
        walker.Say(said);
        string answer = walker.State.Results.Single(result => result.Check == "outdoor-fan-turns").Words;
        Assert.StartsWith(begins, answer, StringComparison.OrdinalIgnoreCase);
    }

    [Theory]
    [InlineData("yep i can hear it running", "yes")]
    [InlineData("yes, i see it spinning", "yes")]
    [InlineData("yeah i can see it going", "yes")]
    [InlineData("no i can see it is not moving", "no")]
    public void YesOrNo_ToldBySenses_IsTheAnswerAndNoRequest(string said, string begins)
    {
        Walker walker = At("outdoor-fan-turns");
        Reply reply = walker.Say(said);
        Assert.DoesNotContain(reply.Segments, segment => segment.Kind == SegmentKind.Refusal);
        string answer = walker.State.Results.Single(result => result.Check == "outdoor-fan-turns").Words;
        Assert.StartsWith(begins, answer, StringComparison.OrdinalIgnoreCase);
    }

    [Theory]
    [InlineData("i can hear it running")]
    [InlineData("i can see it turning")]
    public void WhatIsSensed_AtACheckForIt_IsNoRequest(string said) =>
        Assert.DoesNotContain(At("outdoor-fan-turns").Say(said).Segments,
            segment => segment.Kind == SegmentKind.Refusal);

    [Theory]
    [InlineData("yes i can just keep it running")]
    [InlineData("yes i can hear it, can i keep it running?")]
    [InlineData("yep i can hear it, i will keep it running with the smoke")]
    public void Request_BehindAYes_IsStillRefused(string said)
    {
        Walker walker = At("outdoor-fan-turns");
        Assert.Contains(walker.Say(said).Segments,
            segment => segment.Kind is SegmentKind.Refusal or SegmentKind.Caution);
        Assert.DoesNotContain(walker.State.Results, result => result.Check == "outdoor-fan-turns");
    }

    [Theory]
    [InlineData("no it moves")]
    [InlineData("yes it stays silent")]
    [InlineData("no it leaks water")]
    [InlineData("no, it does not stay silent")]
    public void YesOrNo_GoingOnOtherwise_IsNone(string said)
    {
        Walker walker = At("outdoor-fan-turns");
        walker.Say(said);
        Assert.DoesNotContain(walker.State.Results, result => result.Check == "outdoor-fan-turns");
    }

    [Theory]
    [InlineData("less than 1", "leaky")]
    [InlineData("under 1", "leaky")]
    [InlineData("below 1", "leaky")]
    [InlineData("1 or more", "good")]
    [InlineData("1 or over", "good")]
    public void Comparison_WithoutItsUnit_IsTheAnswerOfTheButton(string said, string outcome)
    {
        Walker walker = At("unit-insulation");
        walker.Say(said);
        Assert.Equal(outcome, walker.State.Results.Single(result => result.Check == "unit-insulation").Outcome);
    }

    [Theory]
    [InlineData("yes a bit at the kitchen tap")]
    [InlineData("yeah, slightly on the shower")]
    [InlineData("yes in the sink a little")]
    [InlineData("yep the washing machine a bit")]
    public void NeededAnswer_YesWithWhere_IsTaken(string said)
    {
        Walker walker = At("tingle-elsewhere");
        walker.Say(said);
        Assert.Equal("yes", walker.State.Results.Single(result => result.Check == "tingle-elsewhere").Outcome);
    }

    [Theory]
    [InlineData("yes only the unit")]
    [InlineData("yes i asked")]
    [InlineData("yes the tap is fine")]
    public void NeededAnswer_YesWithoutWhere_IsAskedAgain(string said)
    {
        Walker walker = At("tingle-elsewhere");
        walker.Say(said);
        Assert.DoesNotContain(walker.State.Results, result => result.Check == "tingle-elsewhere"
            && result.Outcome == "yes");
    }

    [Theory]
    [InlineData("filter was dirty, not clean")]
    [InlineData("the filter was not clean, it was dirty")]
    [InlineData("filter is blocked, not clean")]
    [InlineData("filters are dirty instead of clean")]
    public void EarlierResult_NamedInPart_IsCorrected(string said)
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "weak-airflow");
        walker.Tap("clean");
        Assert.NotEqual("filter-look", walker.Question.Subject);
        walker.Say(said);
        Assert.Equal("blocked", walker.State.Results.Single(result => result.Check == "filter-look").Outcome);
    }

    [Theory]
    [InlineData("I think 0.2 megohm")]
    [InlineData("0.2 MΩ I guess")]
    [InlineData("probably 0.2 Mohm")]
    public void Reading_ToldWithDoubt_CountsLess(string said)
    {
        Walker sure = At("unit-insulation"), unsure = At("unit-insulation");
        sure.Say("0.2 megohm");
        unsure.Say(said);
        Assert.True(Weight(unsure) < Weight(sure), said);
        Assert.Contains(unsure.Reply.Segments,
            segment => segment.From.Contains(new Provenance.Phrase("notice-reading-doubted")));
    }

    // Common practice, no source: the field shows °F; 77 °C is no air of a room.
    [Fact]
    public void Temperatures_InTheUnitOfTheField_AreNotAskedAbout()
    {
        Walker walker = At("temperature-split");
        walker.Say("77 57");
        Assert.Equal(2, walker.State.Results.Single(result => result.Check == "temperature-split").Readings.Length);
    }

    [Theory]
    [InlineData("owner", false)]
    [InlineData("technician", true)]
    public void Why_ByAnOwner_HasNoMinutesAndNoFigures(string role, bool figures)
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", role, "weak-airflow");
        for (int asked = 0; asked < 3 && walker.Question.Kind == QuestionKind.Check; asked++)
        {
            walker.Say("why");
            string[] why = [.. walker.Reply.Segments.Where(segment => segment.Kind == SegmentKind.Why)
                .Select(segment => segment.Text)];
            Assert.NotEmpty(why);
            Assert.Equal(figures, why.Any(text => text.Any(char.IsAsciiDigit)));
            walker.Tap(walker.Question.Options[^1].Key == "none" ? "none" : walker.Question.Options[0].Key);
        }
    }

    // Common practice, no source: who may have got a shock is told to see a doctor, who smells burning or stands beside
    // water is told what fits that.
    [Theory]
    [InlineData("burning smell from the unit", "closed-stop-safe", false)]
    [InlineData("there is smoke coming out", "closed-stop-safe", false)]
    [InlineData("water is dripping on the plug", "closed-stop-wet", false)]
    [InlineData("i got a shock from the unit", "closed-stop-shock", true)]
    [InlineData("there is a loud hiss", "closed-stop-gas", false)]
    public void Danger_Told_HasTheCautionThatFits(string said, string caution, bool doctor)
    {
        var walker = new Walker(ShippedContent.Assistant);
        walker.Send(new MessageBody.Opening());
        walker.Say(said);
        Assert.Contains(walker.Reply.Segments, segment => segment.From.Contains(new Provenance.Phrase(caution)));
        Assert.Equal(doctor,
            walker.Reply.Segments.Any(segment => segment.From.Contains(new Provenance.Phrase("danger-shock"))));
    }

    [Theory]
    [InlineData("it smells burnt")]
    [InlineData("there is smoke")]
    [InlineData("i get a shock from it")]
    [InlineData("it hisses loudly")]
    [InlineData("it leaks refrigerant")]
    [InlineData("the breaker trips again")]
    [InlineData("it ices up")]
    [InlineData("i smell gas")]
    public void WhatToDo_HoweverItIsAsked_IsAnsweredAlike(string about)
    {
        string said = Answer($"what should i do if {about}");
        Assert.Equal(said, Answer($"what do i do if {about}"));
        Assert.Equal(said, Answer($"what should we do if {about}"));
        Assert.Equal(said, Answer($"what can i do if {about}"));
    }

    // Asked about beforehand it is no sign that was seen.
    [Theory]
    [InlineData("what should i do if it smells burnt")]
    [InlineData("what do i do if there is smoke")]
    [InlineData("what do i do when i get a shock from it")]
    public void WhatToDo_AtADanger_IsSaidAndNotEntered(string said)
    {
        var walker = new Walker(ShippedContent.Assistant);
        walker.Send(new MessageBody.Opening());
        walker.Say(said);
        Assert.Contains(walker.Reply.Segments,
            segment => segment.From.Contains(new Provenance.Phrase("answer-if-danger")));
        Assert.Empty(walker.State.Results);
    }

    private static string Answer(string said)
    {
        var walker = new Walker(ShippedContent.Assistant);
        walker.Send(new MessageBody.Opening());
        return string.Join(' ', walker.Say(said).Segments.Select(segment => segment.Text));
    }

    private static double Weight(Walker walker) =>
        walker.State.Results.Single(result => result.Check == "unit-insulation").Weights.Max();

    // A case at one check, whatever its turn.
    private static Walker At(string check)
    {
        Check page = ShippedContent.Library.Graph.Find(new CheckId(check))!;
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician",
            check == "tingle-elsewhere" ? "shock-from-casing" : "poor-cooling");
        AccessId access = page.Access.First();
        walker.Note(new AccessReached(access.Value), new StepChosen(StepKind.Check, check, access.Value));
        walker.Say("again");
        Assert.Equal((QuestionKind.Check, check), (walker.Question.Kind, walker.Question.Subject));
        return walker;
    }
}
