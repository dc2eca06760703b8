namespace DxAssistant.Bot.Tests.Server.Commands;

/// <summary>Source of the shapes: the seven-segment table in tests/Reference/README.md, section 14.</summary>
public sealed class GlyphCommandTests
{
    [Theory]
    [InlineData("E5", "E5", "E6")]
    [InlineData("b4", "B4", "64")]
    public async Task Glyph_Code_GivesItAndItsLookAlikes(string text, string canonical, string alike)
    {
        var answer = (await Run.OfAsync($$"""{"text":"{{text}}"}""", "glyph")).Json[0];

        Assert.Equal(canonical, answer.GetProperty("canonical").GetString());
        Assert.Contains(alike, answer.GetProperty("alternatives").EnumerateArray().Select(a => a.GetString()));
    }

    [Fact]
    public async Task Glyph_Blinks_AreCounted()
    {
        var answer = (await Run.OfAsync("""{"text":"the lamp blinks 7 times"}""", "glyph")).Json[0];

        Assert.Equal(7, answer.GetProperty("blinks").GetInt32());
    }
}
