using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Pictures;

namespace DxAssistant.Knowledge.Tests.Pictures;

/// <summary>Displays, the narrowing of faults, and what speaks for and against.</summary>
public sealed class OtherPictureTests
{
    [Theory]
    [InlineData("b4", "steady", "display-steady", "Display b4, steady")]
    [InlineData("E5", "flashing", "display-flashing", "Display E5, flashing")]
    [InlineData("lamp", "3 blinks", "display-lamp", "Lamp: 3 blinks, then a pause")]
    [InlineData("lamp", "13 blinks", "display-lamp-long", "Lamp: 13 blinks, then a pause")]
    [InlineData("lamps", "green 3, red 12", "display-lamps", "Lamp: green 3, red 12, then a pause")]
    public void Display_OfACode_IsTheKeptPicture(string code, string look, string name, string text)
    {
        Drawn drawn = Display(code, look);
        Assert.Equal(text, drawn.Text);
        DrawingRules.NothingCovered(DrawingRules.Hold(drawn));
        GoldenPicture.Compare(name, drawn.Svg);
    }

    // Flashing is seen without motion: by strokes around the glass that a steady display does not have.
    [Theory]
    [InlineData("steady")]
    [InlineData("flashing")]
    public void Display_OfTwoLampsThatDoTheSame_IsTwoLampsAndNoDigits(string look)
    {
        DrawingRules.NothingCovered(DrawingRules.Hold(Display("lamps", look)));
        Assert.Equal(2, Display("lamps", look).Svg.Split("<circle ").Length - 1);
        Assert.DoesNotContain("<polygon ", Display("lamps", look).Svg, StringComparison.Ordinal);
    }

    [Fact]
    public void Display_Flashing_DiffersInShapeAndNotOnlyInMotion()
    {
        string flashing = Display("E5", "flashing").Svg.Replace(" flash\"", "\"", StringComparison.Ordinal);
        Assert.Equal(6, flashing.Split("<line ").Length - Display("E5", "steady").Svg.Split("<line ").Length);
    }

    // b and 6 differ in the top segment alone (segment table, knowledge/Glyphs).
    [Fact]
    public void Display_LookAlikes_DifferInOneSegment()
    {
        int Lit(string code) => Display(code, "steady").Svg.Split("class=\"lit\"").Length - 1;
        Assert.Equal(1, Lit("6") - Lit("b"));
    }

    [Fact]
    public void Belief_OfThreeSteps_IsTheKeptPicture()
    {
        Drawn drawn = BeliefPicture.Of(
            [
                Step("Room sensor code", ("board", 0.2), ("sensor", 0.43), ("plug", 0.3), ("none", 0.07)),
                Step("Plugs: home", ("board", 0.24), ("sensor", 0.64), ("plug", 0.02), ("none", 0.1)),
                Step("Resistance: 2.1 kΩ at 24 °C", ("board", 0.01), ("sensor", 0.98), ("none", 0.01)),
            ], fault => $"Fault of the {fault}", PictureCases.Words)!;
        Assert.Equal("How the faults in question narrowed: Room sensor code → Fault of the sensor 43 %; "
            + "Plugs: home → Fault of the sensor 64 %; Resistance: 2.1 kΩ at 24 °C → Fault of the sensor 98 %.",
            drawn.Text);
        DrawingRules.NothingCovered(DrawingRules.Hold(drawn));
        GoldenPicture.Compare("belief", drawn.Svg);
    }

    [Fact]
    public void Belief_OfOneStep_IsNotDrawn() => Assert.Null(
        BeliefPicture.Of([Step("Code", ("sensor", 1))], fault => fault, PictureCases.Words));

    [Fact]
    public void Ledger_ForAndAgainst_IsTheKeptPicture()
    {
        Drawn drawn = LedgerPicture.Of("Sensor failed",
            [new("Plugs: home", Math.Log(4.6)), new("Resistance: 2.1 kΩ", Math.Log(0.125)),
                new("A very long name of a check that needs two lines: yes", Math.Log(5000))], PictureCases.Words)!;
        Assert.Equal("What moved the odds of Sensor failed against the others: Plugs: home: × 4.6; "
            + "Resistance: 2.1 kΩ: ÷ 8; A very long name of a check that needs two lines: yes: > × 1000.", drawn.Text);
        DrawingRules.NothingCovered(DrawingRules.Hold(drawn));
        GoldenPicture.Compare("ledger", drawn.Svg);
    }

    [Fact]
    public void Belief_OfManySteps_KeepsTheRules()
    {
        ImmutableArray<BeliefStep> steps = [.. Enumerable.Range(0, 30).Select(i =>
            Step($"Check {i} with a rather long title: and its answer", ("a", i / 30.0), ("b", 1 - i / 30.0)))];
        DrawingRules.NothingCovered(DrawingRules.Hold(BeliefPicture.Of(steps, fault => fault, PictureCases.Words)!));
    }

    private static BeliefStep Step(string what, params (string Fault, double Probability)[] shares) =>
        new(what,
            shares.ToImmutableSortedDictionary(share => share.Fault, share => share.Probability,
                StringComparer.Ordinal));

    private static Drawn Display(string code, string look) => DisplayPicture.Of(
        new DisplayCode(code, look, new SymptomId("symptom"),
            new Passage("Meaning", new PagePlace("series/a.md", "Codes"))),
        PictureCases.Words);
}
