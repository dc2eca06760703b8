using DxAssistant.Conversation;
using DxAssistant.Conversation.Replies;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>What people say instead of an answer as it stands on the screen.</summary>
public sealed class PlainAnswerTests
{
    [Theory]
    [InlineData("no smoke no smell no sparks no water")]
    [InlineData("no smoke, no burning smell")]
    [InlineData("nothing burning, no hiss")]
    [InlineData("sparks? no")]
    [InlineData("no burning smell that i can smell")]
    [InlineData("no smoke that I can see")]
    [InlineData("no smells that i noticed")]
    [InlineData("i dont smell anything")]
    [InlineData("no hiss that we can hear right now")]
    public void Danger_EachSignDenied_IsNone(string said)
    {
        Walker walker = AtDanger();
        walker.Say(said);
        Assert.Equal("none", Assert.Single(walker.State.Results).Outcome);
    }

    [Theory]
    [InlineData("no, a hiss")]
    [InlineData("no smoke but a hiss")]
    [InlineData("no smoke a hiss")]
    [InlineData("no, smoke")]
    [InlineData("no smoke hissing")]
    [InlineData("not burning hissing")]
    [InlineData("cant touch plug")]
    public void Danger_OneSignNotDenied_IsNeverNone(string said)
    {
        Walker walker = AtDanger();
        walker.Say(said);
        Assert.DoesNotContain(walker.State.Results, result => result.Outcome == "none");
    }

    [Theory]
    [InlineData("there is a socket below and the water goes right over it")]
    [InlineData("its leaking onto the power strip")]
    [InlineData("rain got into the fuse box")]
    [InlineData("it does not cool, there is a socket below and the water goes right over it")]
    public void Danger_WaterAndWhatIsLive_IsToldInTwoClausesToo(string said)
    {
        Walker walker = AtDanger();
        walker.Say(said);
        Assert.Equal("wet", Assert.Single(walker.State.Results).Outcome);
        Assert.Equal("book", walker.State.ClosedHow);
    }

    [Theory]
    [InlineData("water comes out of the drain plug, no socket near it")]
    [InlineData("the water drips on the floor")]
    [InlineData("it leaks water so I pulled the plug")]
    [InlineData("water on the floor, the socket is dry and not near it")]
    public void Danger_WaterAlone_IsNoSign(string said)
    {
        Walker walker = AtDanger();
        walker.Say(said);
        Assert.DoesNotContain(walker.State.Results, result => result.Outcome == "wet");
    }

    [Theory]
    [InlineData("breaker-once", "unit-dead", "trips")]
    [InlineData("breaker-when", "trips-breaker", "at-once")]
    public void BreakerThatTrips_Owner_IsLedNoFurther(string check, string symptom, string outcome)
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("tarn-duo", "owner", symptom);
        for (int asked = 0; asked < 12 && walker.Question.Subject != check; asked++)
            walker.Tap(walker.Question.Subject == "danger-signs" ? "none" : walker.Question.Options[0].Key);
        Assert.Equal(check, walker.Question.Subject);
        walker.Tap(outcome);
        Assert.Equal("book", walker.State.ClosedHow);
        Assert.Contains(walker.Reply.Segments, said => said.From.Contains(new Provenance.Phrase("closed-leave-off")));
    }

    [Theory]
    [InlineData("brenholt-ws")]
    [InlineData("ostvik-duct")]
    public void BreakerThatTrips_Technician_IsNotToldToSwitchItOn(string series)
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin(series, "technician", "trips-breaker").MakeSafe();
        Assert.DoesNotContain(walker.State.Results, result => result.Check == "breaker-once");
        Assert.NotEqual("breaker-once", walker.Question.Subject);
        Assert.False(new CaseView(ShippedContent.Library,
            walker.State).IsFor(ShippedContent.Library.Checks[new("breaker-once")]));
    }

    [Theory]
    [InlineData("I saw the green light flash 5 times")]
    [InlineData("soft hiss when it stops")]
    [InlineData("there is a flame symbol on the remote")]
    [InlineData("brown wire is loose at plug FM")]
    [InlineData("the flare leaks refrigerant, socket has power")]
    public void Danger_LampsAndSymbolsAndCores_AreNoSign(string said)
    {
        var walker = new Walker(ShippedContent.Assistant);
        walker.Say(said);
        Assert.Empty(walker.State.Results);
    }

    [Theory]
    [InlineData("there is smoke coming out, is that normal? no")]
    public void Danger_AskedAtLength_IsStillTold(string said)
    {
        var walker = new Walker(ShippedContent.Assistant);
        walker.Say(said);
        Assert.Equal("burning", Assert.Single(walker.State.Results).Outcome);
    }

    [Theory]
    [InlineData("yes, it is free", "free")]
    [InlineData("yes all free", "free")]
    [InlineData("no", "blocked")]
    [InlineData("no its free", null)]
    [InlineData("yes a big bush grows right on it", null)]
    [InlineData("yes but only the front", null)]
    public void YesOrNo_WithWhatItIsAbout_IsTheAnswerWhereBothAgree(string said, string? outcome)
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("tarn-duo", "owner", "poor-cooling");
        for (int asked = 0; asked < 8 && walker.Question.Subject != "outdoor-obstructions"; asked++)
            walker.Tap(walker.Question.Subject == "danger-signs" ? "none" : walker.Question.Options[0].Key);
        walker.Say(said);
        Assert.Equal(outcome,
            walker.State.Results.SingleOrDefault(result => result.Check == "outdoor-obstructions")?.Outcome);
    }

    [Theory]
    [InlineData("what")]
    [InlineData("what do you mean")]
    [InlineData("I dont understand")]
    public void NotUnderstood_IsSaidAgainAndNeverAnAnswer(string said)
    {
        Walker walker = AtDanger();
        walker.Tap("none");
        string subject = walker.Question.Subject;
        walker.Say(said);
        Assert.Equal(subject, walker.Question.Subject);
        Assert.Single(walker.State.Results);
    }

    [Theory]
    [InlineData("just send me a technician now")]
    [InlineData("i want to talk to a human")]
    [InlineData("I want to hand this over to a technician")]
    public void WantsAPerson_EndsWithABooking(string said)
    {
        Walker walker = AtDanger();
        walker.Tap("none");
        walker.Say(said);
        Assert.Equal("book", walker.State.ClosedHow);
    }

    [Theory]
    [InlineData("listen i am 84 and it does not cool any more")]
    [InlineData("it does not cool, its 80 degrees in here")]
    public void Number_OfYearsOrDegrees_IsNoCode(string said)
    {
        var walker = new Walker(ShippedContent.Assistant);
        walker.Say(said);
        Assert.Null(walker.State.Code);
        Assert.Equal("poor-cooling", Assert.Single(walker.State.Symptoms).Symptom);
    }

    private static Walker AtDanger() => new Walker(ShippedContent.Assistant).Begin("tarn-duo", "owner", "poor-cooling");
}
