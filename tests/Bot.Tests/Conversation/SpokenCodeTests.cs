using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>A case understands a code in every way in which the <c>glyph</c> command does.</summary>
public sealed class SpokenCodeTests
{
    [Theory]
    [InlineData("b as in bravo, then a four")]
    [InlineData("be four")]
    [InlineData("it was E5 but now its b4")]
    [InlineData("a small b and a big 4, not b6")]
    public void Code_SpelledAsTheFirstWords_IsItsSymptom(string words)
    {
        Walker walker = Chosen(words);
        Assert.Equal("room-sensor-code", Assert.Single(walker.State.Symptoms).Symptom);
    }

    [Theory]
    [InlineData("lol")]
    [InlineData("10 bar")]
    [InlineData("L1-L2 118 V, L1-g 118, L2-g 0")]
    public void Words_ThatAreNoCode_AreNotTakenForOne(string words)
    {
        Walker walker = new(ShippedContent.Assistant);
        walker.Send(new MessageBody.Opening());
        walker.Say(words);
        Assert.Null(walker.State.Code);
        Assert.Empty(walker.State.Symptoms);
    }

    [Fact]
    public void Code_OneSegmentFromOthers_IsAskedWithTheDisplaysDrawn()
    {
        Walker walker = Chosen("shows E6");
        Assert.Equal(QuestionKind.Code, walker.Question.Kind);
        Assert.Contains(walker.Question.Options,
            option => option.Label.StartsWith("E5, steady", StringComparison.Ordinal) && option.Picture is not null);
        Assert.Contains(walker.Reply.Segments,
            segment => segment.Text.Contains("one segment misread or dark", StringComparison.Ordinal));
    }

    [Fact]
    public void Code_ThatNoCodeFits_CanBeADigitWithDarkSegments()
    {
        // U lights bcdef; the 8 of P8 lights a and g as well.
        Walker walker = Chosen("P U");
        Assert.Equal(QuestionKind.Code, walker.Question.Kind);
        Assert.Contains(walker.Question.Options, option => option.Label.StartsWith("P8", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("both lamps stay on", "memory-code")]
    [InlineData("both lamps flash together", "icing-indoor-coil")]
    public void Lamps_ThatDoTheSame_AreACodeOfTheirOwn(string words, string symptom)
    {
        Walker walker = Chosen(words, "ostvik-lc");
        Assert.Equal(symptom, Assert.Single(walker.State.Symptoms).Symptom);
    }

    [Fact]
    public void Lamps_ThatNoSeriesHas_AreSaidAsTheyWereSeen()
    {
        Walker walker = Chosen("green 9 red 7", "ostvik-lc");
        Assert.Equal(QuestionKind.Complaint, walker.Question.Kind);
        Assert.Contains(walker.Reply.Segments,
            segment => segment.Text.Contains("green 9, red 7", StringComparison.Ordinal));
    }

    private static Walker Chosen(string words, string series = "brenholt-ws")
    {
        var walker = new Walker(ShippedContent.Assistant);
        walker.Say(words);
        if (walker.Question.Kind == QuestionKind.Told) walker.Tap("yes");
        if (walker.Question.Kind == QuestionKind.Series) walker.Tap(series);
        return walker;
    }
}
