using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Tests.Quantities;

public sealed class UnitTests
{
    // Source: exact definitions of the units (1 lbf/in² = 6894.757293168 Pa, 1 ft = 0.3048 m; ice point 32 °F = 0 °C).
    [Theory]
    [InlineData("kohm", 2.1, 2100)]
    [InlineData("psig", 100, 689_475.7293168)]
    [InlineData("micron", 760_000, 101_325)]
    [InlineData("degF", 212, 100)]
    [InlineData("F_diff", 9, 5)]
    [InlineData("µF", 35, 35e-6)]
    [InlineData("μF", 35, 35e-6)]
    [InlineData("MΩ", 1, 1e6)]
    [InlineData("mΩ", 1, 1e-3)]
    [InlineData("cfm", 1, 0.000471947443)]
    public void ToSi_ExactDefinitions_Agree(string symbol, double value, double si)
    {
        Assert.True(Unit.TryParse(symbol, out var unit));
        Assert.Equal(si, unit.ToSi(value), Math.Abs(si) * 1e-8);
    }

    [Fact]
    public void FromSi_EveryUnit_UndoesToSi()
    {
        foreach (var unit in Unit.All)
            Assert.Equal(37.5, unit.FromSi(unit.ToSi(37.5)), 1e-9);
    }

    [Theory]
    [InlineData("K", QuantityKind.Temperature, 300, 26.85)]
    [InlineData("°F", QuantityKind.TemperatureDifference, 18, 10)]
    [InlineData("kPa", QuantityKind.GaugePressure, 2, 2000)]
    [InlineData("kPa", QuantityKind.AbsolutePressure, 2, 2000)]
    [InlineData("%", QuantityKind.Ratio, 5, 0.05)]
    public void TryParse_SpellingOfSeveralKinds_TakesTheKindAsked(
        string symbol, QuantityKind kind, double value, double si)
    {
        Assert.True(Unit.TryParse(symbol, kind, out var unit));
        Assert.Equal(si, unit.ToSi(value), 1e-9);
    }

    [Theory]
    [InlineData("inwg")]
    [InlineData("Kohm")]
    [InlineData(null)]
    public void TryParse_UnknownSpelling_IsRefused(string? symbol) => Assert.False(Unit.TryParse(symbol, out _));

    [Fact]
    public void All_SpellingAndKind_NameOneUnit()
    {
        var doubles = Unit.All.SelectMany(unit => unit.Spellings.Select(spelling => (spelling, unit.Kind)))
            .GroupBy(pair => pair).Where(group => group.Count() > 1).Select(group => group.Key);
        Assert.Empty(doubles);
    }
}
