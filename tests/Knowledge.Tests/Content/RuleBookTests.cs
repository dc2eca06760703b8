using DxAssistant.Knowledge.Content;

namespace DxAssistant.Knowledge.Tests.Content;

public class RuleBookTests
{
    private static readonly string File = Path.Combine(RepositoryFolder.Root(), "knowledge/Content/RULES.md");

    [Fact]
    public void Page_OfTheRules_IsTheOneInTheRepository()
    {
        if (Environment.GetEnvironmentVariable("DX_UPDATE") == "1") System.IO.File.WriteAllText(File, RuleBook.Page());
        Assert.Equal(System.IO.File.ReadAllText(File), RuleBook.Page());
    }

    [Fact]
    public void Meant_MisspeltName_IsTheNearestRule() => Assert.Equal("broken-link", RuleBook.Meant("brokenlink"));
}
