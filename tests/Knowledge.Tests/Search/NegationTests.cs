using DxAssistant.Knowledge.Search;
using DxAssistant.Knowledge.Search.Clauses;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Tests.Search;

public sealed class NegationTests
{
    [Theory]
    [InlineData("quit spinning", "| not spinning")]
    [InlineData("refuses to start", "| not start")]
    [InlineData("does not even get any power", "| does not power")]
    [InlineData("no longer cools", "| not cools")]
    [InlineData("the stop valve", "| the stop valve")]
    [InlineData("rather than the pump", "| not the pump")]
    [InlineData("cold instead of hot", "| cold instead of hot")]
    [InlineData("no sign of a leak", "| not a leak")]
    [InlineData("nothing missing", "| not missing")]
    [InlineData("nothing happens", "| nothing happens")]
    [InlineData("does not get the room warm", "| does not get the room warm")]
    [InlineData("failed the test", "| failed the test")]
    public void Normalize_WaysOfSayingNot_BecomeNot(string text, string words) =>
        Assert.Equal(words, string.Join(' ', Negation.Normalize(WordSplitter.Split(text))));
}
