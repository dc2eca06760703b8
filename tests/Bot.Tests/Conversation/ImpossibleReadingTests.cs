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

    private static Reading At(ReadingField field, double si) => new(field.Label, ReadingState.Number, si, field.Unit, "");
}
