using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Tests.Quantities;

public sealed class QuantityTextTests
{
    [Theory]
    [InlineData("0.05 Ω", 0.05)]
    [InlineData("−20 °C", -20)]
    [InlineData("1,500 m", 1500)]
    [InlineData("5%", 0.05)]
    [InlineData("2.5e-3 1/K", 0.0025)]
    [InlineData("60", 60)]
    public void TryParse_ContentCells_GiveSiValues(string text, double si)
    {
        Assert.True(QuantityText.TryParse(text, out var quantity));
        Assert.Equal(si, quantity.Si, 1e-12);
    }

    [Theory]
    [InlineData("")]
    [InlineData("Ω")]
    [InlineData("5 bananas")]
    [InlineData("1,5 V")]
    [InlineData("NaN V")]
    public void TryParse_NotAQuantity_IsRefused(string text) => Assert.False(QuantityText.TryParse(text, out _));

    [Fact]
    public void ToString_AnyQuantity_IsInvariant() => Assert.Equal(
        "0.05 kΩ", new Quantity(0.05, Units.KiloOhm).ToString());
}
