using DxAssistant.Knowledge.Search;
using DxAssistant.Knowledge.Search.Learning;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Tests.Search;

public sealed class LearningOrderTests
{
    [Fact]
    public void PlaceOf_SameWords_IsTheSameInOneOrderAlone()
    {
        var alone = LearningOrder.PlaceOf(WordSplitter.Split("fan does not turn"));
        Assert.Equal(alone, LearningOrder.PlaceOf(WordSplitter.Split("Fan does not turn!")));
        Assert.NotEqual(alone, LearningOrder.PlaceOf(WordSplitter.Split("fan turn does not")));
    }
}
