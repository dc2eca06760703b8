using DxAssistant.Knowledge.Glyphs;

namespace DxAssistant.Knowledge.Tests.Glyphs;

/// <summary>Blinks of one lamp and of several, as told and as shown.</summary>
public sealed class LampPatternTests
{
    [Theory]
    [InlineData("3 blinks", "3 blinks")]
    [InlineData("1 blink", "1 blinks")]
    [InlineData("red 5 blinks", "red 5 blinks")]
    [InlineData("red 1, green 3", "green 3, red 1")]
    public void TryRead_Patterns_AreWrittenOneWay(string look, string written)
    {
        Assert.True(LampPattern.TryRead(look, out LampPattern? pattern));
        Assert.Equal(written, pattern.ToString());
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("steady")]
    [InlineData("3")]
    [InlineData("0 blinks")]
    [InlineData("100 blinks")]
    [InlineData("purple 3, red 1")]
    [InlineData("red 3, red 1")]
    [InlineData("3 blinks, 2 blinks")]
    [InlineData("green 3 red 1")]
    public void TryRead_NoPattern_IsFalse(string? look) => Assert.False(LampPattern.TryRead(look, out _));

    // Told, shown, may be it, tells all of it.
    [Theory]
    [InlineData("3 blinks", "3 blinks", true, true)]
    [InlineData("red 3 blinks", "3 blinks", true, true)]
    [InlineData("4 blinks", "3 blinks", false, false)]
    [InlineData("green 3, red 1", "green 3, red 1", true, true)]
    [InlineData("green 1, red 3", "green 3, red 1", false, false)]
    [InlineData("red 1 blinks", "green 3, red 1", true, false)]
    [InlineData("red 3 blinks", "green 3, red 1", false, false)]
    [InlineData("3 blinks", "green 3, red 1", true, false)]
    [InlineData("first 3, second 1", "green 3, red 1", true, false)]
    [InlineData("first 1, second 3", "green 3, red 1", true, false)]
    [InlineData("first 3, second 3", "green 3, red 1", false, false)]
    [InlineData("green 3, red 1", "3 blinks", false, false)]
    public void CanBe_AndTells_OfWhatWasTold(string told, string shown, bool canBe, bool tells)
    {
        Assert.True(LampPattern.TryRead(told, out LampPattern? said));
        Assert.True(LampPattern.TryRead(shown, out LampPattern? seen));
        Assert.Equal((canBe, tells), (said.CanBe(seen), said.Tells(seen)));
    }

    [Theory]
    [InlineData("green 3 red 1", "green 3, red 1")]
    [InlineData("red flashes once, green three times", "green 3, red 1")]
    [InlineData("2 blinks pause 3 blinks", "first 2, second 3")]
    [InlineData("it blinks red 5 times", "red 5 blinks")]
    [InlineData("the lamp blinks 7 times", "7 blinks")]
    public void Of_AMessage_IsItsPattern(string text, string pattern) =>
        Assert.Equal(pattern, LampPattern.Of(GlyphReader.Read(text))?.ToString());

    [Fact]
    public void Of_ADigitCode_IsNone() => Assert.Null(LampPattern.Of(GlyphReader.Read("E5 steady")));
}
