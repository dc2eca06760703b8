using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>How people answer on the telephone: with "uh" and "I think so", and by saying why they cannot.</summary>
public sealed class UsualAnswerTests
{
    [Theory]
    [InlineData("uh no i dont think so, nothing like that")]
    [InlineData("no nothing that i know")]
    [InlineData("umm nope all good here")]
    [InlineData("well no, not that i can see")]
    public void Danger_DeniedAsPeopleDo_IsNone(string said)
    {
        Walker walker = AtDanger();
        walker.Say(said);
        Assert.Equal("none", Assert.Single(walker.State.Results).Outcome);
    }

    [Theory]
    [InlineData("not really")]
    [InlineData("i doubt it")]
    [InlineData("i dont think so")]
    [InlineData("not exactly")]
    [InlineData("not quite")]
    [InlineData("i cant see anything")]
    [InlineData("i cant smell anything")]
    [InlineData("i dont hear anything")]
    [InlineData("not loud")]
    [InlineData("not constant")]
    [InlineData("not me")]
    public void Danger_HalfDenied_IsAskedAgain(string said)
    {
        Walker walker = AtDanger();
        string asked = walker.Question.Subject;
        walker.Say(said);
        Assert.Empty(walker.State.Results);
        Assert.Equal((QuestionKind.Check, asked), (walker.Question.Kind, walker.Question.Subject));
    }

    [Theory]
    [InlineData("not really hot")]
    [InlineData("not very hot")]
    public void Danger_OnlyWeakened_IsNotDenied(string said)
    {
        Walker walker = AtDanger();
        walker.Say(said);
        Assert.Empty(walker.State.Results);
    }

    [Theory]
    [InlineData("not really")]
    [InlineData("no, just a little tingle")]
    [InlineData("well a slight hiss yes")]
    public void Danger_HalfAnswered_IsAskedForASureAnswer(string said)
    {
        Walker walker = AtDanger();
        Reply reply = walker.Say(said);
        Assert.DoesNotContain(walker.State.Results, result => result.Outcome == "none");
        Assert.DoesNotContain(reply.Segments, segment => segment.From.Contains(new Provenance.Phrase("notice-choose")));
    }

    [Theory]
    [InlineData("yeah i think so")]
    [InlineData("um yes i guess")]
    public void Danger_SaidToBeThere_IsNeverNone(string said)
    {
        Walker walker = AtDanger();
        Reply reply = walker.Say(said);
        Assert.Empty(walker.State.Results);
        Assert.Contains(reply.Segments, segment => segment.From.Contains(new Provenance.Phrase("notice-which-danger")));
    }

    [Theory]
    [InlineData("yeah i think so", "right")]
    [InlineData("um yes i guess", "right")]
    [InlineData("not really", "wrong")]
    [InlineData("well no i dont think so", "wrong")]
    public void YesOrNo_AsPeopleSayIt_IsTheAnswer(string said, string outcome)
    {
        Walker walker = AtStep();
        walker.Say(said);
        Assert.Equal(outcome, walker.State.Results.Single(result => result.Check == "settings-look").Outcome);
    }

    [Theory]
    [InlineData("how would I know", CommandWord.Unsure)]
    [InlineData("well how am i supposed to know that", CommandWord.Unsure)]
    [InlineData("i cant see it from here its on the roof", CommandWord.Cannot)]
    [InlineData("i cant get up there with my bad knee", CommandWord.Cannot)]
    public void LeftOut_WithItsReason_IsLeftOut(string said, CommandWord why)
    {
        Walker walker = AtStep();
        walker.Say(said);
        Assert.Equal(why, walker.State.PassedOver["settings-look"]);
    }

    [Theory]
    [InlineData("i cant see it moving")]
    [InlineData("it wont open all the way")]
    [InlineData("i cant reach it easily")]
    public void WhatIsSeen_InWordsOfNotBeingAble_LeavesNothingOut(string said)
    {
        Walker walker = AtStep();
        walker.Say(said);
        Assert.Empty(walker.State.PassedOver);
    }

    [Theory]
    [InlineData("washed it")]
    [InlineData("ok cleaned it")]
    public void Repair_SaidToBeDone_IsTriedOut(string said)
    {
        Walker walker = AtStep();
        walker.Tap("wrong");
        walker.Say(said);
        Assert.Equal((QuestionKind.Verify, "correct-settings"), (walker.Question.Kind, walker.Question.Subject));
    }

    // It may have come back by itself: then the repair proves nothing.
    [Theory]
    [InlineData("its cooling now")]
    [InlineData("running")]
    [InlineData("it works")]
    public void Repair_NotSaidToBeDone_IsNotTakenForDone(string said)
    {
        Walker walker = AtStep();
        walker.Tap("wrong");
        walker.Say(said);
        Assert.Equal(QuestionKind.Repair, walker.Question.Kind);
        Assert.Null(walker.State.Unverified);
    }

    [Theory]
    [InlineData("poor-cooling", "its cooling now", true)]
    [InlineData("poor-cooling", "its warm now", false)]
    [InlineData("poor-heating", "its cold now", false)]
    [InlineData("poor-heating", "heating now", true)]
    [InlineData("poor-cooling", "much better", false)]
    public void Trial_CoolsOrHeatsNow_CuresWhatDidNot(string symptom, string said, bool cured)
    {
        Walker walker = AtStep(symptom);
        walker.Tap("wrong");
        walker.Say("done");
        Assert.Equal(QuestionKind.Verify, walker.Question.Kind);
        walker.Say(said);
        Assert.Equal(cured, walker.State.Repairs is [{ Works: true }]);
        if (!cured)
            Assert.Equal((QuestionKind.Verify, "correct-settings"), (walker.Question.Kind, walker.Question.Subject));
    }

    [Fact]
    public void Repair_InSpanish_IsTriedOutOnceDone()
    {
        Walker walker = AtStep();
        walker.Tap("wrong");
        walker.Say("español");
        walker.Say("ya lo lavé");
        Assert.Equal(QuestionKind.Verify, walker.State.Question?.Kind);
    }

    [Theory]
    [InlineData("creo que sí", "right")]
    [InlineData("pues no, la verdad", "wrong")]
    [InlineData("bueno sí claro", "right")]
    public void YesOrNo_InSpanish_IsTheAnswer(string said, string outcome)
    {
        Walker walker = AtStep();
        walker.Say("español");
        walker.Say(said);
        Assert.Equal(outcome, walker.State.Results.Single(result => result.Check == "settings-look").Outcome);
    }

    [Fact]
    public void NotReally_AtAStep_IsNotLeavingItOut()
    {
        Walker walker = AtStep();
        walker.Say("not really");
        Assert.Empty(walker.State.PassedOver);
    }

    private static Walker AtDanger(string symptom = "poor-cooling") =>
        new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "owner", symptom);

    private static Walker AtStep(string symptom = "poor-cooling")
    {
        Walker walker = AtDanger(symptom);
        walker.Tap("none");
        Assert.Equal("settings-look", walker.Question.Subject);
        return walker;
    }
}
