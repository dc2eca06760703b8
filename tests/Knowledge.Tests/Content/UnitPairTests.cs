using DxAssistant.Knowledge.Content.Constructs;

namespace DxAssistant.Knowledge.Tests.Content;

public sealed class UnitPairTests
{
    [Theory]
    [InlineData("Stay two metres away.")]
    [InlineData("Wait until the coil is below 40 °C.")]
    [InlineData("Cut it back by 3 in.")]
    [InlineData("Soak it in 50 g of acid.")]
    public void Figure_InOneSystemOnly_IsAlone(string text) =>
        Assert.Contains(UnitPair.All, pair => pair.IsAloneIn(text));

    [Theory]
    [InlineData("Stay two metres (6 ft) away.")]
    [InlineData("Try a lamp in the same room and one in another room.")]
    [InlineData("Push it in. Measure 3 in series.")]
    [InlineData("Blow 400 m³/h through it.")]
    public void Figure_InBothOrNone_IsNotAlone(string text) =>
        Assert.DoesNotContain(UnitPair.All, pair => pair.IsAloneIn(text));
}
