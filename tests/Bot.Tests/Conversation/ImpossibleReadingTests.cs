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
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "refrigerant", "compressor-start-code");
        while (walker.Question.Subject != "compressor-windings") HiddenFault.Typical("compressor-winding").Answer(walker);
        Assert.DoesNotContain(Again, Fill(walker));
        Assert.Contains(Again, Fill(walker));
        walker.Say("not sure");
        Assert.NotEqual("compressor-windings", walker.Question.Subject);
    }

    private const string Again = "reading-impossible-again";

    private static IEnumerable<string> Fill(Walker walker) => walker.Fill(("U–V", "0.9 Ω"), ("V–W", "0.9 Ω"), ("U–W", "OL"))
        .Segments.SelectMany(said => said.From).OfType<Provenance.Phrase>().Select(phrase => phrase.Id);

    private static Reading At(ReadingField field, double si) => new(field.Label, ReadingState.Number, si, field.Unit, "");
}
