using DxAssistant.Knowledge.Search;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Tests.Search;

public sealed class WordSplitterTests
{
    [Theory]
    [InlineData("It WON'T turn on!", "| it not turn on")]
    [InlineData("doesn’t cool", "| not cool")]
    [InlineData("filter’s clean, fan's dead", "| filter is clean | fan is dead")]
    [InlineData("196v at 22.5C", "| 196 v at 22.5 c")]
    [InlineData("four-way valve", "| 4 way valve")]
    [InlineData("code E5.", "| code e5")]
    [InlineData("mouldy, discoloured, energised", "| moldy | discolored | energized")]
    [InlineData("raise the noise", "| raise the noise")]
    [InlineData("Kühlung", "| kuhlung")]
    public void Split_Text_GivesPlainWordsAndClauses(string text, string words) =>
        Assert.Equal(words, string.Join(' ', WordSplitter.Split(text)));
}
