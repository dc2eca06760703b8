using System.Globalization;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Knowledge.Tests.Content;

public class DiagnosticTextTests
{
    [Fact]
    public void Render_BrokenLink_ShowsPlacePageWordsAndRemedy()
    {
        ContentFolder folder = TinyContent.With("cautions/live-mains.md", TinyContent.Texts["cautions/live-mains.md"]
            .Replace("- Prove dead.", "- Prove dead, as on [the page](../access/isolated-opne.md)."));
        Assert.Equal("""
            content/cautions/live-mains.md:13:32: error[broken-link]: there is no page `../access/isolated-opne.md`
              page   Live mains, under Do
              words  … Prove dead, as on [the page](⟦../access/isolated-opne.md⟧).
              mend   did you mean `../access/isolated-open.md`?

            """, Render(folder));
    }

    [Fact]
    public void Render_FieldBeforeAnyHeading_IsAtTheHeadOfThePage()
    {
        ContentFolder folder = TinyContent.With("checks/fan-plug.md",
            TinyContent.Texts["checks/fan-plug.md"].Replace("who: technician", "who: technican"));
        Assert.Equal("""
            content/checks/fan-plug.md:6:6: error[unknown-id]: `technican` is not the id of a role
              page   Indoor fan plug, at its head
              words  who: ⟦technican⟧
              mend   did you mean `technician`?

            """, Render(folder));
    }

    // A log cuts long lines or lets them run over: what is around the words is cut first, then the words.
    [Fact]
    public void Render_LongLine_QuotesNoMoreThanALineOfALogHolds()
    {
        string long1 = string.Join(' ', Enumerable.Repeat("e\u0301lan", 40));
        ContentFolder folder = TinyContent.With("cautions/live-mains.md", TinyContent.Texts["cautions/live-mains.md"]
            .Replace("- Prove dead.",
                $"- {long1} [x]({long1.Replace(" ", "-", StringComparison.Ordinal)}.md) {long1}"));
        Diagnostic link = ContentCompiler.Compile(folder).Diagnostics.Single(found => found.Name == "broken-link");
        string words = DiagnosticText.Render(link, folder).Split('\n')
            .First(line => line.StartsWith("  words  ", StringComparison.Ordinal));
        string[] parts = words["  words  ".Length..].Split('⟦', '⟧');
        Assert.Equal([31, 73, 31], parts.Select(part => new StringInfo(part).LengthInTextElements));
        Assert.Equal(('…', '…', '…'), (parts[0][0], parts[1][^1], parts[2][^1]));
    }

    [Fact]
    public void Render_ColumnAfterCombiningMarksAndEmoji_CountsCharactersAsSeen()
    {
        // e with a combining acute accent and a family of four are one character each to a reader.
        ContentFolder folder = TinyContent.With("cautions/live-mains.md", TinyContent.Texts["cautions/live-mains.md"]
            .Replace("- Prove dead.", "- e\u0301👨‍👩‍👧‍👦 [x](y.md)"));
        Diagnostic found = Assert.Single(ContentCompiler.Compile(folder).Diagnostics);
        Assert.Equal(new SourceSpan("cautions/live-mains.md", 13, 10, 4), found.At);
    }

    [Fact]
    public void Render_MissingPage_QuotesNothing()
    {
        ContentFolder folder = ContentFolder.Of(TinyContent.Folder.Files.Where(file => file.Path != "glossary.md"));
        Assert.Equal("content/glossary.md:1:1: error[missing-page]: the folder has no such page\n", Render(folder));
    }

    [Fact]
    public void Render_WindowsLineEndsAndByteOrderMark_MoveNothing()
    {
        string text = TinyContent.Texts["checks/fan-plug.md"].Replace("who: technician", "who: technican");
        string plain = Render(TinyContent.With("checks/fan-plug.md", text));
        Assert.Equal(plain, Render(TinyContent.With("checks/fan-plug.md", "\uFEFF" + text.Replace("\n", "\r\n"))));
    }

    private static string Render(ContentFolder folder) =>
        DiagnosticText.Render(Assert.Single(ContentCompiler.Compile(folder).Diagnostics), folder, "content/");
}
