using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>
/// Owners and people at a help desk: who is there in one word, what somebody else says, a visit asked for, and a list
/// that nothing fits.
/// </summary>
public sealed class PlainTalkTests
{
    [Theory]
    [InlineData("homeowner", "owner")]
    [InlineData("the tenant", "owner")]
    [InlineData("I'm the renter", "owner")]
    [InlineData("i own the house", "owner")]
    [InlineData("the customer", "owner")]
    [InlineData("my wife", "owner")]
    [InlineData("inquilino", "owner")]
    [InlineData("el dueño", "owner")]
    [InlineData("hvac guy", "technician")]
    [InlineData("i'm the service tech", "technician")]
    [InlineData("tech", "technician")]
    public void WhoIsThere_InOneWord_IsTaken(string words, string role)
    {
        Walker walker = AtRole();
        walker.Say(words);
        Assert.Equal(role, walker.State.Role);
    }

    [Theory]
    [InlineData("me")]
    [InlineData("just me")]
    [InlineData("yo")]
    public void WhoIsThere_SomebodyNotNamed_IsAskedFurther(string words)
    {
        Walker walker = AtRole();
        Reply reply = walker.Say(words);
        Assert.Contains(reply.Segments, segment => segment.From.Contains(new Provenance.Phrase("notice-which-person")));
        Assert.Equal(QuestionKind.Role, walker.Question.Kind);
    }

    [Theory]
    [InlineData("none that i can see")]
    [InlineData("she says none of that")]
    [InlineData("customer says no")]
    [InlineData("the customer says none of those as far as she can see")]
    public void Danger_DeniedForSomebodyElse_IsNone(string words)
    {
        Walker walker = Owner("poor-cooling");
        walker.Say(words);
        Assert.Equal("none", Assert.Single(walker.State.Results).Outcome);
    }

    [Theory]
    [InlineData("there is smoke she says")]
    [InlineData("she says it smells burnt that she can smell")]
    public void Danger_ToldForSomebodyElse_IsNeverNone(string words)
    {
        Walker walker = Owner("poor-cooling");
        walker.Say(words);
        Assert.DoesNotContain(walker.State.Results, result => result.Outcome == "none");
    }

    [Theory]
    [InlineData("filter-look", "ITS CLEAN", "clean")]
    [InlineData("outdoor-obstructions", "customer says its all free", "free")]
    [InlineData("drip-place", "on the left side", "end")]
    public void Answer_InItsOwnWords_IsTaken(string check, string words, string outcome)
    {
        Walker walker = AtCheck(check);
        walker.Say(words);
        Assert.Contains(walker.State.Results, result => result.Check == check && result.Outcome == outcome);
    }

    [Fact]
    public void AskedWhatAnAnswerMeans_ItIsNoAnswer()
    {
        Walker walker = AtCheck("filter-look");
        walker.Say("what do you mean by full of dust");
        Assert.Equal("filter-look", walker.Question.Subject);
    }

    [Theory]
    [InlineData("can you send someone")]
    [InlineData("just book me a technician")]
    [InlineData("i need someone to come out and fix it")]
    [InlineData("can i get a technician out here")]
    public void Visit_AskedForAnywhere_EndsWithWhatToTell(string words)
    {
        Walker[] places = [new(ShippedContent.Assistant), AtRole(), AtCheck("drip-place")];
        Assert.All(places, walker =>
        {
            Reply reply = walker.Say(words);
            Assert.Equal("book", walker.State.ClosedHow);
            Assert.Contains(reply.Segments, segment =>
                segment.From.Contains(new Provenance.Phrase("closed-book-owner")));
        });
    }

    [Theory]
    [InlineData("should i call a technician")]
    [InlineData("a technician was here and fixed it yesterday")]
    [InlineData("do not send anyone")]
    public void Visit_SpokenOf_IsNotAskedFor(string words)
    {
        Walker walker = AtCheck("drip-place");
        walker.Say(words);
        Assert.Null(walker.State.ClosedHow);
    }

    [Fact]
    public void List_WhoCannotTell_KeepsIt()
    {
        var walker = new Walker(ShippedContent.Assistant);
        walker.Say("it's making a noise");
        walker.Say("idk");
        string[] offered = [.. walker.Question.Options.Select(option => option.Key)];
        Assert.Equal(["noise-indoor", "noise-outdoor", "none"], offered.Order(StringComparer.Ordinal));
        walker.Say("idk");
        Assert.Equal(offered, walker.Question.Options.Select(option => option.Key));
    }

    [Fact]
    public void Answer_ThatFitsNotTwice_IsToldWhatMayBeAnswered()
    {
        Walker walker = AtCheck("filter-look");
        walker.Say("purple");
        Reply reply = walker.Say("purple");
        Assert.Contains(reply.Segments, segment => segment.From.Contains(new Provenance.Phrase("notice-choose-again"))
            && segment.Text.Contains("full of dust", StringComparison.Ordinal));
    }

    [Fact]
    public void OtherUnit_Owner_HearsWhatToDo()
    {
        var walker = new Walker(ShippedContent.Assistant);
        walker.Say("it does not cool");
        Assert.Contains(walker.Tap("other-unit").Segments,
            segment => segment.From.Contains(new Provenance.Phrase("closed-book-owner")));
    }

    [Fact]
    public void Conclusion_Owner_HearsNoFigures()
    {
        Walker walker = Owner("poor-cooling");
        HiddenFault hidden = HiddenFault.Typical("filter-blocked");
        for (int step = 0; step < 20 && walker.Question.Kind == QuestionKind.Check; step++) hidden.Answer(walker);
        Assert.Contains(walker.Reply.Segments, segment => segment.Kind == SegmentKind.Conclusion);
        Assert.DoesNotContain(walker.Reply.Segments, segment => segment.Text.Contains('%', StringComparison.Ordinal));
    }

    private static Walker AtRole()
    {
        var walker = new Walker(ShippedContent.Assistant);
        walker.Say("it drips water inside");
        walker.Tap("brenholt-ws");
        return walker;
    }

    private static Walker Owner(string symptom) =>
        new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "owner", symptom);

    // The first answer of each check stands for a sound unit.
    private static Walker AtCheck(string check)
    {
        Walker walker = Owner(check == "drip-place" ? "water-dripping-indoor" : "poor-cooling");
        for (int step = 0; step < 9 && walker.Question.Subject != check; step++)
            walker.Tap(walker.Question.Options[0].Key);
        Assert.Equal(check, walker.Question.Subject);
        return walker;
    }
}
