using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Tests.Search;

public class WordRowTests
{
    [Theory]
    [InlineData(0, 1, "outdoor")]
    [InlineData(1, 2, "fan is")]
    [InlineData(2, 2, "is dead")]
    [InlineData(0, 4, "outdoor fan is dead")]
    public void Run_AnyPlaceAndLength_IsTheWordsWithBlanksBetween(int at, int length, string run) =>
        Assert.Equal(run, new WordRow(["outdoor", "fan", "is", "dead"]).Run(at, length).ToString());
}
