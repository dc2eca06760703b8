using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Understanding;
using DxAssistant.Graph.Model;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>
/// Words that deny the trouble itself are noticed; what sounds like a denial and is a complaint is none.
/// </summary>
public sealed class GoneTroubleTests
{
    [Theory]
    [InlineData("No water drips")]
    [InlineData("water is not dripping any more")]
    [InlineData("it works again")]
    [InlineData("could not reproduce")]
    [InlineData("it does not do it now")]
    [InlineData("i cleaned the hose and now it works")]
    public void Step_TroubleDenied_IsAskedOnceAndEndsInAdvice(string words)
    {
        Walker walker = AtWater();
        walker.Say(words);
        Assert.Equal(QuestionKind.Gone, walker.Question.Kind);
        Reply end = walker.Say("yes");
        Assert.Equal("watch", walker.State.ClosedHow);
        Assert.Contains(end.Segments, segment => segment.From.Contains(new Provenance.Phrase("closed-gone")));
        Assert.Contains(end.Segments, segment => segment.Kind == SegmentKind.Advice
            && segment.From.OfType<Provenance.Page>()
                .Any(page => page.Path.EndsWith("watch-and-record.md", StringComparison.Ordinal)));
    }

    [Fact]
    public void Gone_IsStillThere_GoesOnWithTheStepAndIsNotAskedAgain()
    {
        Walker walker = AtWater();
        string step = walker.Question.Subject;
        walker.Say("No water drips");
        walker.Tap("stays");
        Assert.Equal((QuestionKind.Check, step), (walker.Question.Kind, walker.Question.Subject));
        Reply again = walker.Say("No water drips");
        Assert.Equal((QuestionKind.Check, step), (walker.Question.Kind, walker.Question.Subject));
        Assert.Contains(again.Segments, segment => segment.From.Contains(new Provenance.Phrase("notice-choose")));
    }

    [Fact]
    public void Gone_ToldAnewAfterTheEnd_WalksAgain()
    {
        Walker walker = AtWater();
        walker.Say("No water drips");
        walker.Tap("gone");
        walker.Say("water drips from the indoor unit");
        Assert.Null(walker.State.ClosedHow);
        Assert.Equal(QuestionKind.Check, walker.Question.Kind);
    }

    // Smoke that is gone is no reason to switch on again.
    [Fact]
    public void BurningSmell_Denied_IsWorkedOnAllTheSame()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "burning-smell")
            .MakeSafe();
        walker.Say("it works again");
        Assert.NotEqual(QuestionKind.Gone, walker.Question.Kind);
        Assert.Null(walker.State.ClosedHow);
    }

    [Theory]
    [InlineData("the plug was fine")]
    [InlineData("filter is ok")]
    [InlineData("nothing smells burnt")]
    [InlineData("does not smell burnt")]
    [InlineData("no smell")]
    public void FirstWords_SomethingInOrder_AreNoComplaint(string words)
    {
        var walker = new Walker(ShippedContent.Assistant);
        walker.Send(new DxAssistant.Conversation.Messages.MessageBody.Opening());
        Reply reply = walker.Say(words);
        Assert.Contains(reply.Segments, segment => segment.From.Contains(new Provenance.Phrase("notice-no-trouble")));
        Assert.Equal(QuestionKind.Complaint, walker.Question.Kind);
        Assert.Empty(walker.Log.OfType<SymptomReported>());
    }

    // What people say who have a trouble is never taken for its denial.
    [Fact]
    public void Wording_OfAnySymptom_DeniesNone()
    {
        foreach (var library in ShippedContent.Library.Translations.Values.Prepend(ShippedContent.Library))
        {
            Denials denials = new(library, new CommandWords(library.Phrases));
            foreach (var (id, page) in library.Symptoms)
                foreach (var said in page.SaidAs)
                    Assert.False(denials.Denies(said.Text, id) || denials.Praises(said.Text), said.Text);
        }
    }

    [Theory]
    [InlineData("no heat")]
    [InlineData("no cool")]
    [InlineData("won't turn on at all")]
    [InlineData("not blowing cold air anymore")]
    [InlineData("outdoor board lost communication, wiring good")]
    public void FirstWords_OfATrouble_AreHeardAsOne(string words)
    {
        var walker = new Walker(ShippedContent.Assistant);
        walker.Send(new DxAssistant.Conversation.Messages.MessageBody.Opening());
        Assert.DoesNotContain(walker.Say(words).Segments,
            segment => segment.From.Contains(new Provenance.Phrase("notice-no-trouble")));
    }

    // Where something is measured, that is a reading.
    [Fact]
    public void NoVoltage_WhereAVoltageIsAsked_IsNoDenial()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "supply-voltage-code");
        while (walker.Question.Fields.IsEmpty) HiddenFault.Typical("supply-under-voltage").Answer(walker);
        walker.Say("no voltage");
        Assert.NotEqual(QuestionKind.Gone, walker.Question.Kind);
    }

    [Theory]
    [InlineData("not cooling", "poor-cooling")]
    [InlineData("no cool", "poor-cooling")]
    [InlineData("it is not heating the room", "poor-heating")]
    [InlineData("no air comes out", "weak-airflow")]
    [InlineData("wont start", "unit-dead")]
    [InlineData("display shows nothing", "no-display")]
    public void Complaint_WithADenialInIt_DeniesNothing(string words, string symptom) => Assert.False(
        new Denials(ShippedContent.Library, new CommandWords(ShippedContent.Library.Phrases)).Denies(words,
            new SymptomId(symptom)));

    [Theory]
    [InlineData("it is broken", QuestionKind.Symptom)]
    [InlineData("", QuestionKind.Complaint)]
    [InlineData("water drips from the indoor unit", QuestionKind.Series)]
    public void Role_SaidWhereSomethingElseIsAsked_IsTakenAndTheQuestionStays(string first, QuestionKind open)
    {
        var walker = new Walker(ShippedContent.Assistant);
        walker.Send(new DxAssistant.Conversation.Messages.MessageBody.Opening());
        if (first.Length > 0) walker.Say(first);
        Assert.Equal(open, walker.Question.Kind);
        Reply reply = walker.Say("technician");
        Assert.Contains(reply.Segments, segment => segment.From.Contains(new Provenance.Phrase("understood-role")));
        Assert.Equal("technician", walker.State.Role);
        Assert.Equal(open, walker.Question.Kind);
    }

    private static Walker AtWater()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "water-dripping-indoor")
            .MakeSafe();
        Assert.Equal(QuestionKind.Check, walker.Question.Kind);
        return walker;
    }
}
