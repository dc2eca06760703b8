using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Judging;
using DxAssistant.Knowledge.Tests.Content;

namespace DxAssistant.Knowledge.Tests.Judging;

public sealed class CalculationManualTests
{
    [Fact]
    public void Text_CommittedPage_IsTheSame()
    {
        var path = Path.Combine(RepositoryFolder.Root(), "knowledge", "CALCULATIONS.md");
        if (Environment.GetEnvironmentVariable("DX_UPDATE") == "1")
            File.WriteAllText(path, CalculationManual.Text());
        Assert.Equal(File.ReadAllText(path), CalculationManual.Text());
    }

    [Fact]
    public void Text_EveryCalculationAndJudge_HasARow()
    {
        var rows = CalculationManual.Text().Split('\n');
        foreach (var name in CalculationCatalogue.All.Keys.Concat(JudgeCatalogue.All.Keys))
            Assert.Contains(rows, row => row.StartsWith($"| `{name}` |", StringComparison.Ordinal));
    }
}
