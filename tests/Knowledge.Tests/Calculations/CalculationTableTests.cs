using DxAssistant.Knowledge.Calculations;

namespace DxAssistant.Knowledge.Tests.Calculations;

public sealed class CalculationTableTests
{
    [Fact]
    public void Text_EveryCalculation_HasOneRowWithItsSource()
    {
        var rows = CalculationTable.Text().Split('\n', StringSplitOptions.RemoveEmptyEntries).Skip(2).ToArray();
        Assert.Equal(CalculationCatalogue.All.Count, rows.Length);
        foreach (var (row, calculation) in rows.Zip(CalculationCatalogue.All.Values))
        {
            Assert.StartsWith($"| `{calculation.Name}` |", row, StringComparison.Ordinal);
            Assert.Contains(calculation.Source.Document, row, StringComparison.Ordinal);
            Assert.Equal(7, row.Replace("\\|", "", StringComparison.Ordinal).Count(letter => letter == '|'));
        }
    }

    [Fact]
    public void Derivation_Superheat_ReachesGaugeAndAtmosphere()
    {
        var answer = Assert.IsType<CalculationResult.Answer>(
            CalculationCatalogue.Run(CheckCase.All["superheat-01"].Request));
        var saturation = Assert.Single(answer.Derivation.Children);
        Assert.Contains("Lemmon", saturation.Source.Document, StringComparison.Ordinal);
        Assert.Equal(["p_gauge", "p_atm"], Assert.Single(saturation.Children).PutIn.Select(term => term.Symbol));
    }

    [Theory]
    [InlineData("iso14253-2017-01", "iso14253-2017")]
    [InlineData("superheat", "superheat")]
    [InlineData("ntc-beta-r-extra-7", "ntc-beta-r")]
    [InlineData("no-such-thing-01", null)]
    public void Find_IdOfACase_FindsItsCalculation(string id, string? name) =>
        Assert.Equal(name, CalculationCatalogue.Find(new CalculationRequest(
            id, System.Collections.Immutable.ImmutableSortedDictionary<string, CalculationValue>.Empty))?.Name);
}
