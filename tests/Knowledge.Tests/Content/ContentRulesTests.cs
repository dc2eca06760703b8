using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Rules;

namespace DxAssistant.Knowledge.Tests.Content;

public class ContentRulesTests
{
    public static TheoryData<string> Names => [.. ContentRules.All.Select(rule => rule.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Check_BadExample_GivesItsDiagnosticAlone(string name)
    {
        (ContentFolder folder, SourceSpan? mark) = TinyContent.With(Rule(name).Bad);
        Diagnostic found = Assert.Single(ContentCompiler.Compile(folder).Diagnostics);
        Assert.Equal(name, found.Name);
        if (mark is not null)
        {
            Assert.Equal(mark, found.At);
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Check_GoodExample_FindsNothing(string name) =>
        Assert.Empty(ContentCompiler.Compile(TinyContent.With(Rule(name).Good).Folder).Diagnostics);

    [Theory]
    [MemberData(nameof(Names))]
    public void Message_OfBadExample_IsAClauseWithoutFullStop(string name)
    {
        Diagnostic found = ContentCompiler.Compile(TinyContent.With(Rule(name).Bad).Folder).Diagnostics[0];
        Assert.False(found.Message.EndsWith('.'), found.Message);
        Assert.False(char.IsUpper(found.Message[0]) && char.IsLower(found.Message[1]), found.Message);
        Assert.DoesNotContain('\n', found.Message + found.Help);
    }

    [Fact]
    public void All_Names_AreKebabCaseAndSorted()
    {
        string[] names = [.. ContentRules.All.Select(rule => rule.Name)];
        Assert.All(names, name => Assert.Matches("^[a-z]+(-[a-z]+)*$", name));
        Assert.Equal(names.Order(StringComparer.Ordinal).Distinct(), names);
    }

    private static IContentRule Rule(string name) => ContentRules.All.Single(rule => rule.Name == name);
}
