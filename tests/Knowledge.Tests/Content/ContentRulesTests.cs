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
    public void Check_FurtherExamples_BadGivesItsDiagnosticAloneAndGoodNone() => Assert.All(
        ContentRules.All.SelectMany(rule => rule.More.Select(pair => (rule.Name, Pair: pair))), more =>
        {
            (ContentFolder folder, SourceSpan? mark) = TinyContent.With(more.Pair.Bad);
            Diagnostic found = Assert.Single(ContentCompiler.Compile(folder).Diagnostics);
            Assert.Equal((more.Name, mark ?? found.At), (found.Name, found.At));
            Assert.Empty(ContentCompiler.Compile(TinyContent.With(more.Pair.Good).Folder).Diagnostics);
        });

    [Fact]
    public void Check_VarietyOfAnUnknownFault_IsADiagnostic()
    {
        string text = TinyContent.Texts["faults/fan-plug-loose.md"]
            .Replace("kind: fault\n", "kind: fault\nvariety-of: fan-motor-faild\n");
        Diagnostic found =
            Assert.Single(ContentCompiler.Compile(TinyContent.With("faults/fan-plug-loose.md", text)).Diagnostics);
        Assert.Equal("`fan-motor-faild` is not the id of a fault", found.Message);
        Assert.Equal("fan-motor-failed", found.Mend?.Text);
    }

    [Fact]
    public void Meaning_EveryRule_IsTheSummaryOfItsFile() => Assert.All(ContentRules.All, rule =>
    {
        string source = File.ReadAllText(Path.Combine(RepositoryFolder.Root(),
            $"{rule.GetType().FullName!.Replace('.', '/').Replace("DxAssistant/Knowledge", "knowledge")}.cs"));
        string summary = source.Split("/// <summary>")[1].Split("</summary>")[0].Replace("\n/// ", " ").Trim()
            .Replace("<c>", "`").Replace("</c>", "`").Replace("&lt;", "<").Replace("&gt;", ">").Replace("&amp;", "&");
        Assert.Equal(rule.Meaning, summary);
    });

    [Fact]
    public void All_Names_AreKebabCaseAndSorted()
    {
        string[] names = [.. ContentRules.All.Select(rule => rule.Name)];
        Assert.All(names, name => Assert.Matches("^[a-z]+(-[a-z]+)*$", name));
        Assert.Equal(names.Order(StringComparer.Ordinal).Distinct(), names);
    }

    // A page that is only begun lacks headings, and its question is wrong all the same.
    [Theory]
    [InlineData("Is it home? Is it clean?", "not-one-question")]
    [InlineData("Is it home, and are the pins bright?", "double-question")]
    [InlineData("Is the board good?", "bare-check")]
    [InlineData("Does the air feel warmer than 4 °C?", "unit-alone")]
    public void Check_QuestionOnAPageWithoutItsOtherHeadings_IsJudged(string question, string rule)
    {
        string text = TinyContent.Texts["checks/fan-plug.md"];
        string begun = text[..text.IndexOf("## How", StringComparison.Ordinal)].Replace(
            "Is the fan motor plug fully home?", question);
        string[] found = [.. ContentCompiler.Compile(TinyContent.With("checks/fan-plug.md", begun)).Diagnostics
            .Where(each => each.At.Path == "checks/fan-plug.md").Select(each => each.Name)];
        Assert.Contains(rule, found);
        Assert.Contains("missing-heading", found);
    }

    private static IContentRule Rule(string name) => ContentRules.All.Single(rule => rule.Name == name);
}
