using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Knowledge.Tests.Readings;

public sealed class AskedQuantityTests
{
    [Theory]
    [InlineData("resistance", QuantityKind.Resistance)]
    [InlineData("Insulation resistance", QuantityKind.Resistance)]
    [InlineData("supply voltage", QuantityKind.Voltage)]
    [InlineData("suction line temperature", QuantityKind.Temperature)]
    [InlineData("temperature-difference", QuantityKind.TemperatureDifference)]
    [InlineData("TemperatureDifference", QuantityKind.TemperatureDifference)]
    [InlineData("gauge_pressure", QuantityKind.GaugePressure)]
    [InlineData("pressure", QuantityKind.Pressure)]
    [InlineData("superheat", QuantityKind.TemperatureDifference)]
    public void TryContext_NameOfAQuantity_AsksIt(string asked, QuantityKind kind)
    {
        Assert.True(AskedQuantity.TryContext(asked, out ReadingContext? context));
        Assert.Equal(kind, context.Asked);
        Assert.Null(context.DefaultUnit);
    }

    [Theory]
    [InlineData("kΩ", QuantityKind.Resistance)]
    [InlineData("°F", QuantityKind.Temperature)]
    [InlineData("psig", QuantityKind.GaugePressure)]
    public void TryContext_Unit_IsTheDefault(string asked, QuantityKind kind)
    {
        Assert.True(AskedQuantity.TryContext(asked, out ReadingContext? context));
        Assert.Equal(kind, context.Asked);
        Assert.Equal(asked, context.DefaultUnit?.Symbol);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("  ")]
    public void TryContext_Nothing_AsksNothing(string? asked)
    {
        Assert.True(AskedQuantity.TryContext(asked, out ReadingContext? context));
        Assert.Equal(ReadingContext.None, context);
    }

    [Fact]
    public void TryContext_NeitherQuantityNorUnit_IsFalse() => Assert.False(AskedQuantity.TryContext("colour", out _));

    [Theory]
    [InlineData("°C", Market.FahrenheitPsi, "°F")]
    [InlineData("°F", Market.CelsiusKilopascal, "°C")]
    [InlineData("kPa", Market.FahrenheitPsi, "psi")]
    [InlineData("psig", Market.CelsiusKilopascal, "kPa(g)")]
    [InlineData("kΩ", Market.FahrenheitPsi, "kΩ")]
    [InlineData("Pa", Market.FahrenheitPsi, "Pa")]
    public void MarketUnits_Of_GivesWhatTheMarketReads(string symbol, Market market, string expected)
    {
        Assert.True(Unit.TryParse(symbol, out Unit? unit));
        Assert.Equal(expected, MarketUnits.Of(unit, market).Symbol);
        Assert.Equal(unit.Kind, MarketUnits.Of(unit, market).Kind);
        Assert.Equal(unit, MarketUnits.Of(unit, null));
    }

    [Fact]
    public void ForForm_NoLine_Throws() => Assert.Throws<ArgumentException>(() => ReadingContext.ForForm([]));
}
