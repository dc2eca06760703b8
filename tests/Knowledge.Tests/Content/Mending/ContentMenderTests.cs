using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Rules;

namespace DxAssistant.Knowledge.Tests.Content.Mending;

public class ContentMenderTests
{
    private const string Plug = "checks/fan-plug.md";

    public static TheoryData<string, string> Slips => new()
    {
        { "who: technician", "who: technican" },
        { "minutes: 3", "minuets: 3" },
        { "kind: check", "kind: chek" },
        { "## Outcomes", "## Outcome" },
        { "## How", "### How" },
        { "../cautions/live-mains.md", "../cautions/live-main.md" },
        { "../cautions/live-mains.md", "../caution/live-mains.md" },
        { "every other fault", "every other faults" },
        { "../cautions/live-mains.md", "../cautions/l\u0456ve-mains.md" },
        { "| Fault | home |", "| Fault | h\u043Em\u0435 |" },
        { "## How", "## H\u043Ew" },
        { "](../sources.md#common-practice)", "](../sources.md#common-practise)" },
    };

    [Theory]
    [MemberData(nameof(Slips))]
    public void Mend_OneSlip_GivesThePageAsItWas(string right, string slip)
    {
        string text = TinyContent.Texts[Plug];
        Assert.Contains(right, text, StringComparison.Ordinal);
        ContentFolder bad = TinyContent.With(Plug, text.Replace(right, slip));
        Assert.NotEmpty(ContentCompiler.Compile(bad).Diagnostics);
        Assert.Equal(text, ContentMender.Mend(bad).File(Plug)!.Text);
    }

    [Fact]
    public void Mend_TwoThingsMayBeMeant_LeavesThePageAlone()
    {
        // As near to `home` as to `hose`.
        string text = TinyContent.Texts[Plug].Replace("| loose |", "| hose |")
            .Replace("| Fault | home |", "| Fault | hobe |");
        ContentFolder bad = TinyContent.With(Plug, text);
        Assert.Contains(ContentCompiler.Compile(bad).Diagnostics, found => found.Name == "unknown-outcome");
        Assert.Equal(text, ContentMender.Mend(bad).File(Plug)!.Text);
    }

    // A Cyrillic letter in the name of the file, and in the outcome that others name.
    [Fact]
    public void Mend_IllegalIdIsNear_WritesItIntoNoPage()
    {
        const string Motor = "faults/fan-motor-failed.md";
        ContentFolder renamed = TinyContent.Folder.Without(Motor)
            .With(new ContentFile("faults/f\u0430n-motor-failed.md", TinyContent.Texts[Motor]));
        Diagnostic found = Assert.Single(ContentCompiler.Compile(renamed).Diagnostics);
        Assert.Equal(("wrong-place", "name the file anew: the 2nd letter is a Cyrillic \u0430"),
            (found.Name, found.Help));
        Assert.Same(renamed, ContentMender.Mend(renamed));
        ContentFolder outcome = TinyContent.With(Plug, TinyContent.Texts[Plug].Replace("| home |  It", "| home | It")
            .Replace("| home | It", "| h\u043Eme | It"));
        Assert.Contains(ContentCompiler.Compile(outcome).Diagnostics,
            each => each.Help!.EndsWith("the 2nd letter is a Cyrillic \u043E", StringComparison.Ordinal));
        Assert.Same(outcome, ContentMender.Mend(outcome));
    }

    [Fact]
    public void Mend_CleanFolder_IsTheSameFolder()
    {
        ContentFolder folder = TinyContent.Folder;
        Assert.Same(folder, ContentMender.Mend(folder));
    }

    [Fact]
    public void Mend_BehindEmoji_CutsWholeCharacters()
    {
        string text = TinyContent.Texts["cautions/live-mains.md"]
            + "\n- 👨‍👩‍👧‍👦 [dead](../acess/isolated-open.md)\n";
        Assert.Contains("👨‍👩‍👧‍👦 [dead](../access/isolated-open.md)",
            ContentMender.Mend(TinyContent.With("cautions/live-mains.md", text)).File("cautions/live-mains.md")!.Text,
            StringComparison.Ordinal);
    }

    // A mend that brings more to light than it puts right, such as a second heading of one name, is left to the author.
    [Fact]
    public void Mend_BadExampleWithAMend_LeavesNothingWrongOrThePageAlone()
    {
        var tried = ContentRules.All.SelectMany(rule => rule.More.Select(pair => pair.Bad).Prepend(rule.Bad))
            .Select(bad => TinyContent.With(bad).Folder)
            .Where(folder => ContentCompiler.Compile(folder).Diagnostics[0].Mend is not null)
            .Select(folder => (Before: folder, After: ContentMender.Mend(folder))).ToList();
        Assert.All(tried, pair => Assert.True(ReferenceEquals(pair.Before, pair.After)
            || ContentCompiler.Compile(pair.After).Diagnostics.IsEmpty));
        Assert.InRange(tried.Count(pair => !ReferenceEquals(pair.Before, pair.After)), 8, 40);
    }

    [Fact]
    public void Write_ChangedLine_IsAUnifiedDiff()
    {
        ContentFolder bad =
            TinyContent.With(Plug, TinyContent.Texts[Plug].Replace("who: technician", "who: technican"));
        Assert.Equal(
            "--- content/checks/fan-plug.md\n+++ content/checks/fan-plug.md\n@@ -6 +6 @@\n-who: technican\n+who: "
                + "technician\n",
            LineChanges.Write(bad, ContentMender.Mend(bad), "content/"));
    }
}
