using DxAssistant.Knowledge.Search;
using DxAssistant.Knowledge.Search.Clauses;
using DxAssistant.Knowledge.Search.Gates;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Tests.Search;

public sealed class VagueTalkTests
{
    [Theory]
    [InlineData("it's broken")]
    [InlineData("need help with my ac")]
    [InlineData("the heat pump is not working right")]
    [InlineData("it stopped working")]
    [InlineData("light blinking")]
    [InlineData("the red lamp is flashing")]
    [InlineData("it shows an error code")]
    [InlineData("something is wrong with my air conditioner")]
    public void Is_OnlyTroubleAndMachine_IsVague(string text) => Assert.True(Is(text));

    [Theory]
    [InlineData("no heat")]
    [InlineData("fan is broken")]
    [InlineData("it shows error e5")]
    [InlineData("my fridge is broken")]
    [InlineData("not working in heat")]
    [InlineData("wrong phase")]
    [InlineData("hello")]
    [InlineData("")]
    [InlineData("my ac")]
    public void Is_SomethingMoreOrNoTrouble_IsNotVague(string text) => Assert.False(Is(text));

    private static bool Is(string text) => VagueTalk.Is(Negation.Normalize(WordSplitter.Split(text)));
}
