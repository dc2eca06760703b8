using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Understanding;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>What the page of a check says cannot be read is no evidence, whichever way it came in.</summary>
public sealed class ImpossibleReadingTests
{
    [Fact]
    public void Place_OutsideOfWhatThePageHoldsPossible_HasNoPlace()
    {
        foreach (CheckPage page in ShippedContent.Library.Checks.Values)
            foreach (ReadingField field in page.Readings)
            {
                Assert.Empty(ReadingIntake.Place(page, [At(field, field.Highest + 1 + Math.Abs(field.Highest))]));
                Assert.Single(ReadingIntake.Place(page, [At(field, field.Highest)]));
            }
    }

    // Two kinds on one form: each line has a range of its own.
    [Fact]
    public void Say_FourHundredBelowZero_IsAskedAgain()
    {
        CheckPage page = ShippedContent.Library.Checks[new CheckId("coil-sensor-resistance")];
        ReadingField cold = page.Readings.First(field => field.Unit.Kind == QuantityKind.Temperature);
        Assert.Empty(ReadingIntake.Place(page, [At(cold, cold.Unit.ToSi(-400))]));
    }

    // Three windings that cannot be: two whole ones in a row are never open together.
    [Fact]
    public void Fill_TheSameImpossibleReadingsAgain_SaysTheWayPastThem()
    {
        Walker walker =
            new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "refrigerant", "compressor-start-code");
        while (walker.Question.Subject != "compressor-windings")
            HiddenFault.Typical("compressor-winding").Answer(walker);
        Assert.DoesNotContain(Again, Fill(walker));
        Assert.Contains(Again, Fill(walker));
        walker.Say("not sure");
        Assert.NotEqual("compressor-windings", walker.Question.Subject);
    }

    // "20k", then "68": one line is open, and a bare number is its.
    [Fact]
    public void BareNumber_WhenOneReadingIsOpen_IsThatReading()
    {
        Walker walker = At("room-sensor-resistance", "room-sensor-code", "sensor-room-air");
        walker.Say("20k");
        Assert.Single(walker.State.Given);
        walker.Say("68");
        Assert.Contains(walker.State.Results, result => result.Check == "room-sensor-resistance");
    }

    // What a gauge works out depends on the refrigerant it was set to.
    [Theory]
    [InlineData("sh 14")]
    [InlineData("superheat 9 k")]
    public void GaugesOwnFigure_IsNoReading(string words)
    {
        Walker walker = At("superheat", "poor-cooling", "undercharge-leak");
        walker.Say(words);
        Assert.Contains(walker.Reply.Segments.SelectMany(said => said.From)
            .OfType<Provenance.Phrase>(), phrase => phrase.Id == "notice-of-gauges");
        Assert.Equal("superheat", walker.Question.Subject);
        Assert.Empty(walker.State.Given);
    }

    private static Walker At(string check, string symptom, string fault)
    {
        const int most = 60;
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "refrigerant", symptom);
        for (int turn = 0; turn < most && walker.Question.Subject != check; turn++)
            HiddenFault.Typical(fault).Answer(walker);
        Assert.Equal(check, walker.Question.Subject);
        return walker;
    }

    private const string Again = "reading-impossible-again";

    private static IEnumerable<string> Fill(Walker walker) =>
        walker.Fill(("U–V", "0.9 Ω"), ("V–W", "0.9 Ω"), ("U–W", "OL"))
        .Segments.SelectMany(said => said.From).OfType<Provenance.Phrase>().Select(phrase => phrase.Id);

    private static Reading At(ReadingField field, double si) =>
        new(field.Label, ReadingState.Number, si, field.Unit, "");
}
