using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Understanding;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>"I don't know" and "can't" are understood at every question.</summary>
public sealed class UnsureTests
{
    [Theory]
    [InlineData("I don't know", CommandWord.Unsure)]
    [InlineData("dunno", CommandWord.Unsure)]
    [InlineData("sorry, I'm really not sure", CommandWord.Unsure)]
    [InlineData("no idea", CommandWord.Unsure)]
    [InlineData("can't get to it", CommandWord.Cannot)]
    [InlineData("I can't reach it right now", CommandWord.Cannot)]
    public void Check_AnsweredSo_IsPassedOverForThatReason(string words, CommandWord reason)
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "indoor-fan-fault")
            .MakeSafe();
        Assert.Equal(QuestionKind.Check, walker.Question.Kind);
        walker.Say(words);
        Assert.Equal(reason, Assert.Single(walker.Log.OfType<CheckPassedOver>()).Reason);
    }

    [Theory]
    [InlineData("", "unsure-complaint")]
    [InlineData("b4", "unsure-series")]
    [InlineData("brenholt b4", "unsure-role")]
    [InlineData("brenholt b4, filter is clean", "unsure-told")]
    [InlineData("brenholt b4 and H0", "unsure-first")]
    public void Question_BeforeTheWalk_SaysHowToFindTheAnswer(string first, string phrase)
    {
        var walker = new Walker(ShippedContent.Assistant);
        walker.Send(new MessageBody.Opening());
        if (first.Length > 0) walker.Say(first);
        if (phrase == "unsure-first") walker.Tap("yes");
        QuestionKind open = walker.Question.Kind;
        walker.Say("I don't know");
        Assert.Contains(walker.Reply.Segments, segment => segment.From.Contains(new Provenance.Phrase(phrase)));
        Assert.Equal(open, walker.Question.Kind);
    }

    // A bare yes says that there is danger, and not which.
    [Fact]
    public void Danger_Yes_IsAskedWhichAndKeptAwayFrom()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "owner", "indoor-fan-not-turning");
        Reply reply = walker.Say("yes");
        Assert.Contains(reply.Segments, segment => segment.From.Contains(new Provenance.Phrase("notice-which-danger")));
        Assert.Equal("danger-signs", walker.Question.Subject);
    }

    [Theory]
    [InlineData("I don't know", "no idea")]
    [InlineData("can't get to it", "dunno")]
    public void Danger_UnknownTwice_EndsTheOwnersWalkAsDanger(string once, string again)
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "owner", "indoor-fan-not-turning");
        Assert.Equal("danger-signs", walker.Question.Subject);
        walker.Say(once);
        Assert.Equal("danger-signs", walker.Question.Subject);
        walker.Say(again);
        Assert.Equal(QuestionKind.Closed, walker.Question.Kind);
        Assert.Contains(walker.Reply.Segments,
            segment => segment.From.Contains(new Provenance.Phrase("closed-stop-unknown")));
    }

    [Theory]
    [InlineData("off")]
    [InlineData("snow")]
    [InlineData("home")]
    public void LoneWord_AtASafetyStep_IsAnAnswerThatDoesNotFit(string word)
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "room-sensor-code");
        OpenQuestion open = walker.Question;
        Reply reply = walker.Say(word);
        Assert.Contains(reply.Segments, segment => segment.From.Contains(new Provenance.Phrase("notice-choose")));
        Assert.Equal((open.Kind, open.Subject), (walker.Question.Kind, walker.Question.Subject));
    }

    // Polite words around a command change nothing: what is left of it must never be a plain answer.
    [Theory]
    [InlineData("words-done")]
    [InlineData("words-yes")]
    [InlineData("words-no")]
    public void PlainAnswer_NeverEndsTheCase(string list)
    {
        foreach (Library library in ShippedContent.Library.Translations.Values.Prepend(ShippedContent.Library))
        {
            CommandWords commands = new(library.Phrases);
            foreach (string word in library.Phrases.Template(list).Split(','))
                Assert.False(commands.Find(word) is CommandWord.StopHere or CommandWord.StartOver, word);
        }
    }

    // What is at hand is said without another question; a new complaint goes on from there.
    [Theory]
    [InlineData("owner", "stop here")]
    [InlineData("owner", "just send a technician please")]
    [InlineData("technician", "I give up")]
    public void StopHere_EndsTheCaseWithWhatToBring(string role, string words)
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("tarn-duo", role, "poor-cooling");
        if (role == "owner") walker.Tap("none");
        walker.Say(words);
        Assert.Equal("book", walker.State.ClosedHow);
        Assert.False(walker.State.IsLeft);
        Assert.Contains(walker.Reply.Segments,
            segment => segment.From.Contains(new Provenance.Phrase("closed-suspects")));
    }

    [Fact]
    public void StopHere_WithTheUnitOpen_SaysHowToLeaveIt()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "room-sensor-code")
            .MakeSafe();
        walker.Order(CommandWord.StopHere);
        Assert.Contains(walker.Reply.Segments,
            segment => segment.From.Contains(new Provenance.Phrase("closed-left-open")));
    }

    [Fact]
    public void StopHere_AtABurningSmell_SaysThatNobodyUsesTheUnit()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "burning-smell");
        walker.Say("stop here");
        Assert.Contains(walker.Reply.Segments, segment => segment.From.Contains(new Provenance.Phrase("closed-stop")));
    }

    [Fact]
    public void StopHere_BeforeSignsOfDangerAreAnswered_AsksForThemFirst()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("tarn-duo", "owner", "poor-cooling");
        walker.Say("send somebody");
        Assert.Equal("danger-signs", walker.Question.Subject);
        walker.Say("send somebody");
        Assert.Contains(walker.Reply.Segments,
            segment => segment.From.Contains(new Provenance.Phrase("closed-stop-unknown")));
    }

    [Fact]
    public void ThirdCheckLeftOut_NamesTheWayOut()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("tarn-duo", "owner", "poor-cooling");
        walker.Tap("none");
        Assert.False(Skipped(walker));
        Assert.False(Skipped(walker));
        Assert.True(Skipped(walker));

        static bool Skipped(Walker walker) => walker.Order(CommandWord.Unsure).Segments
            .Any(segment => segment.From.Contains(new Provenance.Phrase("notice-may-stop-here")));
    }

    [Fact]
    public void Danger_UnknownOnceThenNone_GoesOn()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "owner", "indoor-fan-not-turning");
        walker.Say("not sure");
        walker.Say("no, none of these");
        Assert.NotEqual("danger-signs", walker.Question.Subject);
        Assert.NotEqual(QuestionKind.Closed, walker.Question.Kind);
    }

    [Theory]
    [InlineData("unit is dead. maybe it starts and stops too often", "unit-dead", "short-cycling")]
    public void Complaints_OneSureOneDoubtful_AreBothHeard(string words, string sure, string doubtful)
    {
        Walker walker = new(ShippedContent.Assistant);
        walker.Say(words);
        walker.Tap("tarn-duo");
        walker.Tap("yes");
        Assert.Equal(1, walker.State.Symptoms.Single(symptom => symptom.Symptom == sure).Confidence);
        Assert.InRange(walker.State.Symptoms.Single(symptom => symptom.Symptom == doubtful).Confidence, 0.5, 0.9);
    }

    [Fact]
    public void Symptom_ReportedWithDoubt_CountsLess()
    {
        var walker = new Walker(ShippedContent.Assistant);
        walker.Say("i think the indoor fan does not turn");
        Assert.InRange(Assert.Single(walker.State.Symptoms).Confidence, 0.5, 0.9);
    }
}
