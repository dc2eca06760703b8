using DxAssistant.Knowledge.Search;

namespace DxAssistant.Knowledge.Tests.Search;

public sealed class NegationTests
{
    [Theory]
    [InlineData("quit spinning", "| not spinning")]
    [InlineData("refuses to start", "| not start")]
    [InlineData("does not even get any power", "| does not power")]
    [InlineData("no longer cools", "| not cools")]
    [InlineData("the stop valve", "| the stop valve")]
    [InlineData("failed the test", "| failed the test")]
    public void Normalize_WaysOfSayingNot_BecomeNot(string text, string words) =>
        Assert.Equal(words, string.Join(' ', Negation.Normalize(WordSplitter.Split(text))));
}
