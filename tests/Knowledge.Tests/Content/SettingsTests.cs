using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Walks;

namespace DxAssistant.Knowledge.Tests.Content;

public sealed class SettingsTests
{
    [Fact]
    public void Compile_NothingSet_IsAsUsual()
    {
        Library tiny = ContentCompiler.Compile(TinyContent.Folder).Library!;
        Assert.Equal(0.95, tiny.Settings.Found);
        Assert.Equal(new RuleLimit(1, 0.01), tiny.Settings.LimitOf(LaidRule.NearTie));
    }

    [Fact]
    public void Compile_SettingsAndLimits_AreRead()
    {
        Library tiny = With("| fault found | 0.9 | probability | x | [Common practice](sources.md#common-practice) |",
            "| custom of the trade | 7 | 0.5 | x | [Common practice](sources.md#common-practice) |").Library!;
        Assert.Equal(0.9, tiny.Settings.Found);
        Assert.Equal(3, tiny.Settings.Suspects);
        Assert.Equal(50, tiny.Settings.LimitOf(LaidRule.Custom).Of(100));
        Assert.Equal(7, tiny.Settings.LimitOf(LaidRule.Custom).Of(2));
    }

    [Theory]
    [InlineData("| fault fuond | 0.9 | probability | x | S |", "", "`fault fuond` is not a setting")]
    [InlineData("| fault found | 0.3 | probability | x | S |", "", "`0.3` is not a probability, 0.5 to 0.9999")]
    [InlineData("| suspects named at the end | 2.5 | number | x | S |", "", "`2.5` is not a number, 1 to 10")]
    [InlineData("| fault found | 0.9 | percent | x | S |", "", "`percent` is not the unit of this setting")]
    [InlineData("", "| near miss | 1 | 0 | x | S |", "`near miss` is not a rule over the plan")]
    [InlineData("", "| near tie | -1 | 0 | x | S |", "`-1` is not a number of minutes, 0 to 1440, or `any`")]
    [InlineData("", "| near tie | 1 | 5 | x | S |", "`5` is not a share, 0 to 1")]
    public void Compile_WrongSetting_IsSaidOnce(string setting, string rule, string message) =>
        Assert.Equal(message,
            Assert.Single(With(setting, rule).Diagnostics, found => found.Name == "wrong-setting").Message);

    // Who looks for what can be set finds all of it on the page.
    [Fact]
    public void Shipped_SettingsAndLimits_AreAllThere()
    {
        Library shipped = ContentCompiler.Compile(RepositoryFolder.Read("content")).Library!;
        Assert.Equal(SettingShapes.All.Select(shape => shape.Name)
            .Order(StringComparer.Ordinal), shipped.Settings.Values.Keys);
        Assert.Equal(RuleShapes.Names.Order(StringComparer.Ordinal), shipped.Settings.Limits.Keys);
    }

    private static CompileResult With(string setting, string rule) =>
        ContentCompiler.Compile(TinyContent.With("words.md",
            TinyContent.Texts["words.md"].TrimEnd('\n')
                + "\n\n## Settings\n| Setting | Value | Unit | Means | Source |\n|---|---|---|---|---|\n"
                + Sourced(setting)
            + "\n## Rules over the plan\n| Rule | Minutes | Share | Means | Source |\n|---|---|---|---|---|\n"
            + Sourced(rule)));

    private static string Sourced(string row) => row.Length == 0
        ? ""
        : row.Replace("| S |", "| [Common practice](sources.md#common-practice) |", StringComparison.Ordinal) + "\n";
}
