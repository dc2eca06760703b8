using System.Collections.Immutable;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Constructs;

namespace DxAssistant.Knowledge.Tests.Content;

public sealed class HazardWithoutCautionTests
{
    private const string Step = "1. Open the terminal box.";

    [Fact]
    public void Check_CautionThatStandsInForTheOther_IsEnough() => Assert.Empty(Compile(
        Linked("dead-parts"), ("cautions/dead-parts.md", Caution("dead-parts", "instead-of: [live-mains]"))));

    [Fact]
    public void Check_AnotherCaution_IsNotEnough()
    {
        Diagnostic found = Assert.Single(
            Compile(Linked("dead-parts"), ("cautions/dead-parts.md", Caution("dead-parts", "deadly: true"))));
        Assert.Equal("the words tell of `terminal box`, and the page does not link the caution `live-mains`",
            found.Message);
        Assert.Equal("add `- [Live mains](../cautions/live-mains.md)` under `## Cautions`", found.Help);
    }

    // What is done in one of several states may be done where the hazard is not.
    [Theory]
    [InlineData("[isolated-open]", 1)]
    [InlineData("[isolated-open, closed-running]", 0)]
    public void Check_StateOfTheHazard_CountsWhenThereIsNoOther(string states, int found)
    {
        string check = TinyContent.Texts["checks/board-supply.md"].Replace("access: [isolated-open]",
            $"access: {states}", StringComparison.Ordinal);
        string mains = TinyContent.Texts["cautions/live-mains.md"].Replace("words: [terminal box]",
            "states: [isolated-open]", StringComparison.Ordinal);
        ImmutableArray<Diagnostic> all = Compile(("checks/board-supply.md", check), ("cautions/live-mains.md", mains));
        Assert.Equal(found, all.Count(diagnostic => diagnostic.At.Path == "checks/board-supply.md"));
    }

    [Theory]
    [InlineData("Open the Terminal Box.", "terminal box", 9)]
    [InlineData("a boiler, an oil", "oil", 13)]
    [InlineData("coils", "coil", -1)]
    [InlineData("", "coil", -1)]
    [InlineData("coil", "", -1)]
    public void Find_WholeWordsOnly(string text, string word, int at) => Assert.Equal(at, WholeWord.Find(text, word));

    private static (string Path, string Text) Linked(string caution)
    {
        string text = TinyContent.Texts["checks/board-supply.md"].Replace("1. Measure between",
            $"{Step}\n2. Measure between", StringComparison.Ordinal);
        return ("checks/board-supply.md", text.TrimEnd('\n') + $"\n\n## Cautions\n- [It](../cautions/{caution}.md)\n");
    }

    private static string Caution(string id, string field) =>
        $"---\nkind: caution\nid: {id}\n{field}\n---\n# Parts\n\n## Danger\nParts can kill.\n\n## Do\n- Lock.\n";

    private static ImmutableArray<Diagnostic> Compile(params (string Path, string Text)[] pages)
    {
        Dictionary<string, string> all = new(TinyContent.Texts, StringComparer.Ordinal);
        foreach ((string path, string text) in pages) all[path] = text;
        return ContentCompiler.Compile(
            ContentFolder.Of(all.Select(page => new ContentFile(page.Key, page.Value)))).Diagnostics;
    }
}
