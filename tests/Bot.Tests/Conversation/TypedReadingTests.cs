using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.State;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>
/// Readings as people type them at a check: what is clear is taken, what is offered has a place, nothing is guessed.
/// </summary>
public sealed class TypedReadingTests
{
    [Theory]
    [InlineData("temperature-split", "tarn-duo", "75 in 57 out", "Return air 75 °F, Supply air 57 °F")]
    [InlineData("temperature-split", "brenholt-ws", "75 57", "Return air 75 °F, Supply air 57 °F")]
    [InlineData("condensing-temperature", "tarn-duo", "35 out air, 58C bend", "Outdoor air 35 °C, Middle bend 58 °C")]
    [InlineData("supply-loaded", "brenholt-ws", "L1-L2 240, L1-gnd 120, L2-gnd 120", "Supply 240 V")]
    public void Hear_ClearReadings_AreTaken(string check, string series, string words, string taken)
    {
        Walker walker = At(check, series);
        walker.Say(words);
        Assert.Equal(taken, Assert.Single(walker.Log.OfType<OutcomeSeen>()).Words);
    }

    [Theory]
    [InlineData("temperature-split", "tarn-duo", "27 20", "Return air 27 °C, Supply air 20 °C",
        "Return air 27 °F, Supply air 20 °F")]
    [InlineData("temperature-split-heating", "tarn-duo", "20 in 41 out", "Return air 20 °C, Supply air 41 °C",
        "Return air 20 °F, Supply air 41 °F")]
    [InlineData("fan-windings", "tarn-duo", "42.1 OL OL", "U–V 42.1 Ω, V–W OL, U–W OL")]
    public void Hear_ReadingsOfTwoMeanings_AreOfferedWhole(string check, string series, string words,
        params string[] offered)
    {
        Walker walker = At(check, series);
        walker.Say(words);
        Assert.Equal(QuestionKind.Meaning, walker.Question.Kind);
        Assert.Equal(offered, walker.Question.Options.Select(option => option.Label).SkipLast(1));
    }

    [Theory]
    [InlineData("fan-windings", "tarn-duo", "42.1 17")]
    [InlineData("temperature-split", "tarn-duo", "room 26, vent 18")]
    public void Hear_ReadingsWithoutAPlace_AreNotOffered(string check, string series, string words)
    {
        Walker walker = At(check, series);
        walker.Say(words);
        Assert.Equal((QuestionKind.Check, check), (walker.Question.Kind, walker.Question.Subject));
        Assert.Empty(walker.Log.OfType<ReadingsGiven>());
    }

    [Fact]
    public void Hear_ReadingsOfOtherTerminals_AreNamedAsNotUsed()
    {
        Walker walker = At("supply-loaded", "brenholt-ws");
        Reply reply = walker.Say("L1-L2 240, L1-gnd 120, L2-gnd 118");
        Assert.Contains(reply.Segments, segment =>
            segment.Text.Contains("L1-ground 120 V, L2-ground 118 V", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("supply-loaded", "brenholt-ws", "1")]
    [InlineData("supply-phase-neutral", "ostvik-lc", "2")]
    public void Hear_LoneDigitWhereAnswersAreListed_AsksForTheUnit(string check, string series, string words)
    {
        Walker walker = At(check, series);
        Reply reply = walker.Say(words);
        Assert.Contains(reply.Segments, segment => segment.From.OfType<Provenance.Phrase>()
            .Any(phrase => phrase.Id == "notice-number-alone"));
        Assert.Empty(walker.Log.OfType<ReadingsGiven>());
        Assert.Equal(check, walker.Question.Subject);
    }

    // The list may be out of sight after words that did not fit: no reading comes of the number of a meaning.
    [Fact]
    public void Hear_LoneDigitWhereMeaningsAreListed_IsTheMeaning()
    {
        Walker walker = At("temperature-split", "tarn-duo");
        walker.Say("27 20");
        walker.Say("i see nothing");
        Assert.Equal(QuestionKind.Meaning, walker.Question.Kind);
        walker.Say("1");
        Assert.Equal("Return air 27 °C, Supply air 20 °C", Assert.Single(walker.Log.OfType<OutcomeSeen>()).Words);
    }

    [Theory]
    [InlineData("superheat", "24 K superheat")]
    [InlineData("superheat", "superheat 18K")]
    [InlineData("coil-sensor-resistance", "superheat 18k")]
    public void Hear_SuperheatInKelvins_IsNoReadingOfTheForm(string check, string words)
    {
        Walker walker = At(check, "brenholt-ws");
        walker.Say(words);
        Assert.Empty(walker.Log.OfType<ReadingsGiven>());
        Assert.Equal(QuestionKind.Check, walker.Question.Kind);
    }

    [Theory]
    [InlineData("actually I misread, it was 235")]
    [InlineData("i misread, it was 235 V")]
    [InlineData("sorry, I measured wrong, 235")]
    public void Hear_LastReadingCorrected_ReplacesIt(string words)
    {
        Walker walker = At("supply-loaded", "brenholt-ws");
        walker.Say("185");
        walker.Say(words);
        Assert.Equal("Supply 235 V", walker.State.Results.Single(result => result.Check == "supply-loaded").Words);
    }

    [Theory]
    [InlineData("Tarn Duo, refrigerant technician here, H6. suction 4.1 bar, pipe 20C, high side 22 bar, liquid "
        + "pipe 35C", "superheat", "subcooling")]
    [InlineData("Brenholt WS, refrigerant technician here, high side 520 psig, suction 130 psig, 95F outside",
        "high-side-pressure")]
    public void Hear_FirstMessageWithReadings_TakesEachCompletePair(string words, params string[] checks)
    {
        var walker = new Walker(ShippedContent.Assistant);
        walker.Say(words);
        Assert.Superset(checks.ToHashSet(), walker.State.Unconfirmed.Select(item => item.Thing)
            .OfType<DxAssistant.Conversation.Told.ToldThing.Measured>()
            .Select(measured => measured.Check).ToHashSet());
    }

    // A case at which this check is asked.
    private static Walker At(string check, string series)
    {
        Library library = ShippedContent.Library;
        CheckPage page = library.Checks[new CheckId(check)];
        AccessId access = library.Graph.Find(page.Id)!.Access.First();
        return new Walker(ShippedContent.Assistant, CaseState.New with
        {
            ContentVersion = library.Version,
            Role = "refrigerant",
            Series = series,
            Access = access.Value,
            Symptoms = [new ReportedSymptom("poor-cooling", 1, "cools poorly")],
            Step = new ChosenStep(StepKind.Check, check, access.Value),
            Question = new OpenQuestion("0", QuestionKind.Check, check, page.Ask.Text, [],
                [.. page.Outcomes.Select(outcome => new Option(outcome.Id.Value, outcome.Answer.Text))],
                [.. page.Readings.Select(field => new Field(field.Label, field.Unit.Symbol, field.Where.Text, null))],
                []),
        });
    }
}
