using DxAssistant.Conversation;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.State;
using DxAssistant.Conversation.Told;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>First messages of all kinds of people: the reply is the next sensible thing.</summary>
public sealed class FirstWordsTests
{
    // Times, counts and terminals are no codes, nor is the lamp that a "one" stands for.
    [Theory]
    [InlineData("what would make it trip after ten min")]
    [InlineData("the wall one with the two numbers on it")]
    [InlineData("after the power cut nothing lights up not even the little green one")]
    [InlineData("l1 120 l2 118 and no heat")]
    public void Numbers_ThatAreNoCode_AreNotTakenForOne(string words)
    {
        Walker walker = Said(words);
        Assert.Null(walker.State.Code);
        Assert.DoesNotContain(walker.Reply.Segments,
            segment => segment.Text.StartsWith("No unit I know shows", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("no heat waiting for a technician")]
    [InlineData("unit dead and im not a tech")]
    [InlineData("no cooling should i call a tech here")]
    [InlineData("no heat send us a tech here")]
    public void Person_SpokenOf_IsNotAtTheUnit(string words)
    {
        Walker walker = Said(words);
        Assert.Null(walker.State.Role);
        Assert.DoesNotContain(walker.State.Unconfirmed, item => item.Thing is ToldThing.AtUnit { Role: not "owner" });
    }

    [Theory]
    [InlineData("the code e five", "E5")]
    [InlineData("this is e one on the ostvik lc cassette", "E1")]
    public void Code_SpelledAfterThe_KeepsItsNumber(string words, string code)
    {
        Walker walker = Said(words);
        Assert.Contains(walker.Reply.Segments, segment => segment.Text.Contains(code, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("brenholt ws e5 flashing tech here", "technician")]
    [InlineData("b4 brenholt licensed tech here", "refrigerant")]
    [InlineData("tarn duo no heat owner here", "owner")]
    public void Person_AtTheEndWithoutAComma_IsHeard(string words, string role)
    {
        Walker walker = Said(words);
        Assert.Contains(walker.State.Unconfirmed, item => item.Thing is ToldThing.AtUnit person && person.Role == role);
    }

    [Theory]
    [InlineData("brenholt-ws", "brenholt-ws")]
    [InlineData("Brenholt WS single-zone wall unit", "brenholt-ws")]
    [InlineData("it is the brenholt", "brenholt-ws")]
    [InlineData("Ostvik LC light commercial cassette", "ostvik-lc")]
    public void Series_AndNoMore_TellsOfNoTrouble(string words, string series)
    {
        Walker walker = Said(words);
        Assert.Equal((series, QuestionKind.Complaint), (walker.State.Series, walker.Question.Kind));
        Assert.DoesNotContain(walker.Reply.Segments, segment => segment.Kind == SegmentKind.Notice);
    }

    // Where what is left of a message tells nothing, the trouble is looked for in all of it.
    [Fact]
    public void Finding_BesideIdleWords_LeadsToTheQuestionWhatItIsAbout()
    {
        Walker walker = Said("filter is clean and so on");
        Assert.Equal(QuestionKind.Symptom, walker.Question.Kind);
    }

    [Theory]
    [InlineData("hi")]
    [InlineData("everything works fine now")]
    [InlineData("it is fixed now thanks")]
    public void Words_OfNoTrouble_OfferNone(string words)
    {
        Walker walker = Said(words);
        Assert.Equal(QuestionKind.Complaint, walker.Question.Kind);
        Assert.DoesNotContain(walker.Reply.Segments, segment => segment.Text == "I have nothing about that.");
    }

    [Fact]
    public void Vague_IsClarifiedByOneQuestion()
    {
        Walker walker = Said("its making a noise");
        Assert.Equal("inside-or-outside", walker.Question.Subject);
        walker.Say("outdoor unit");
        Assert.Equal("noise-outdoor", Assert.Single(walker.State.Symptoms).Symptom);
    }

    [Theory]
    [InlineData("maybe its making a noise", 0.7, false)]
    [InlineData("its making a noise now and then", 1, true)]
    [InlineData("its making a noise", 1, false)]
    public void Manner_OfTheComplaint_CountsForTheSymptomThatIsChosen(string words, double confidence,
        bool comesAndGoes)
    {
        Walker walker = Said(words);
        walker.Say("outdoor unit");
        ReportedSymptom symptom = Assert.Single(walker.State.Symptoms);
        Assert.Equal((confidence, comesAndGoes), (symptom.Confidence, symptom.ComesAndGoes));
    }

    [Theory]
    [InlineData("Ostvik LC high pressure trip in cooling", "cooling", false)]
    [InlineData("Ostvik LC high pressure trip in heating mode", "heating", true)]
    [InlineData("Ostvik LC high pressure trip", null, true)]
    public void Mode_BesideTheTrouble_IsKeptAndBarsChecksOfAnother(string words, string? mode, bool isAskedInHeating)
    {
        Walker walker = Said(words);
        Assert.Equal("high-pressure-code", Assert.Single(walker.State.Symptoms).Symptom);
        Assert.Equal(mode, walker.State.Mode);
        Assert.Equal(mode is not null,
            walker.Reply.Segments.Any(said => said.From.Contains(new Provenance.Phrase("understood-mode"))));
        Assert.Equal(isAskedInHeating,
            new CaseView(ShippedContent.Library,
                walker.State).IsFor(ShippedContent.Library.Checks[new("temperature-split-heating")]));
    }

    [Theory]
    [InlineData("yes", "poor-heating")]
    [InlineData("thats right", "poor-heating")]
    [InlineData("no", null)]
    [InlineData("nope", null)]
    public void OneOffered_YesIsItAndNoIsNone(string answer, string? symptom)
    {
        Walker walker = Said("no heat on the ostvlk cassete");
        Assert.Equal(["poor-heating", SymptomNone], walker.Question.Options.Select(option => option.Key));
        walker.Say(answer);
        Assert.Equal(symptom, walker.State.Symptoms.SingleOrDefault()?.Symptom);
    }

    [Fact]
    public void SeveralOffered_YesTellsNothing()
    {
        Walker walker = Said("its making a noise");
        walker.Say("yes");
        Assert.Equal("inside-or-outside", walker.Question.Subject);
        Assert.Contains(walker.Reply.Segments, said => said.From.Contains(new Provenance.Phrase("notice-choose")));
    }

    [Theory]
    [InlineData("yes")]
    [InlineData("no")]
    public void YesOrNo_WhereSomethingElseIsAsked_IsNoGreeting(string words)
    {
        Walker walker = Said("brenholt ws indoor fan does not turn");
        Assert.Equal(QuestionKind.Role, walker.Question.Kind);
        Reply reply = walker.Say(words);
        Assert.Equal(QuestionKind.Role, walker.Question.Kind);
        Assert.Contains(reply.Segments, segment => segment.From.Contains(new Provenance.Phrase("notice-choose")));
        Assert.DoesNotContain(reply.Segments, segment => segment.Kind == SegmentKind.Refusal);
    }

    [Fact]
    public void Clarifying_WhoCannotSay_SeesTheList()
    {
        Walker walker = Said("its making a noise");
        walker.Tap(walker.Question.Options[^1].Key);
        Assert.Equal("", walker.Question.Subject);
        Assert.Contains(walker.Question.Options, option => option.Key == SymptomNone);
    }

    [Theory]
    [InlineData("its broken")]
    [InlineData("need help with my ac")]
    [InlineData("acting weird")]
    public void NothingButTrouble_IsAskedAboutInGeneral(string words)
    {
        Walker walker = Said(words);
        Assert.Equal("what-kind", walker.Question.Subject);
        Assert.Contains(walker.Reply.Segments, segment => segment.Text.Contains("code", StringComparison.Ordinal));
        walker.Say("too warm or too cold");
        Assert.Contains(walker.Question.Options, option => option.Key == "poor-cooling");
        walker.Tap("poor-cooling");
        Assert.Equal("poor-cooling", Assert.Single(walker.State.Symptoms).Symptom);
    }

    [Fact]
    public void WhoIsAskedInGeneral_MayTypeACode()
    {
        Walker walker = Said("its broken");
        walker.Say("E5");
        Assert.Equal("E5", walker.State.Code);
    }

    [Fact]
    public void Angry_IsAnsweredAndItsComplaintHeard()
    {
        Walker walker = Said("THIS IS THE THIRD TIME IM CALLING THE DAMN THING IS DRIPPING ON MY BED");
        Assert.Equal("water-dripping-indoor", Assert.Single(walker.State.Symptoms).Symptom);
        Assert.Contains(walker.Reply.Segments,
            segment => segment.Text.StartsWith("That sounds like", StringComparison.Ordinal));
    }

    [Fact]
    public void Refused_WithAComplaint_KeepsTheComplaint()
    {
        Walker walker = Said("air not cold. gas finish. need refill gas?");
        Assert.Contains(walker.Reply.Segments, segment => segment.Kind == SegmentKind.Refusal);
        Assert.Contains(walker.Reply.Segments,
            segment => segment.Text.Contains("Cools poorly", StringComparison.Ordinal));
        Assert.Equal(QuestionKind.Series, walker.Question.Kind);
    }

    [Fact]
    public void Told_BeforeTheUnitIsKnown_IsSaidToBeHeard()
    {
        Walker walker = Said("replaced the board and still E5");
        Assert.Contains(walker.Reply.Segments, segment => segment.Text.Contains("E5", StringComparison.Ordinal));
        Assert.Equal(QuestionKind.Series, walker.Question.Kind);
    }

    [Fact]
    public void Code_InFrontOfAReason_IsACode()
    {
        Walker walker = Said("Error 88 after power cut");
        Assert.Equal("88", walker.State.Code);
    }

    [Fact]
    public void PlainComplaint_IsTakenAndNothingOfItIsLost()
    {
        Walker walker = Said("breaker trips instantly when outdoor unit starts");
        Assert.Equal("trips-breaker", Assert.Single(walker.State.Symptoms).Symptom);
        Assert.DoesNotContain(walker.Reply.Segments,
            segment => segment.Text.StartsWith("Not used", StringComparison.Ordinal));
    }

    [Fact]
    public void OneGuess_IsAskedAsOne()
    {
        Walker walker = Said("dust comes out");
        Assert.Equal("Is this what you mean?", walker.Question.Text);
    }

    [Theory]
    [InlineData("450", true)]
    [InlineData("450 V", false)]
    [InlineData("231", false)]
    public void Voltage_ThatNoSupplyHas_IsAskedBackUnlessItsUnitIsSaid(string words, bool asked)
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("veldarn-nord", "technician", "unit-dead");
        for (int turn = 0; turn < 60
            && !walker.Question.Subject.StartsWith("supply-line", StringComparison.Ordinal); turn++)
            if (walker.Question.Kind == QuestionKind.Access) walker.MakeSafe();
            else walker.Order(CommandWord.Skip);
        Assert.Equal("supply-line", walker.Question.Subject);
        walker.Say(words);
        Assert.Equal(asked, walker.Question.Kind == QuestionKind.Meaning);
        if (asked) walker.Say("yes");
        Assert.Contains(walker.State.Results, result => result.Check == "supply-line");
    }

    private const string SymptomNone = "none";

    private static Walker Said(string words)
    {
        var walker = new Walker(ShippedContent.Assistant);
        walker.Send(new MessageBody.Opening());
        walker.Say(words);
        return walker;
    }
}
