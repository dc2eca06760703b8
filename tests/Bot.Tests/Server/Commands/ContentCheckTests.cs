using System.Text;
using DxAssistant.Server.Commands;
using DxAssistant.Server.Commands.Authoring;

namespace DxAssistant.Bot.Tests.Server.Commands;

public sealed class ContentCheckTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("pages").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Run_NoSuchFolder_IsAWrongCallWithTheRemedy()
    {
        (int code, string output, string error) = Run(Path.Combine(folder, "nowhere"));
        Assert.Equal((2, ""), (code, output));
        Assert.Matches("^there is no folder .*nowhere; .*content check FOLDER\r?\n$", error);
    }

    [Fact]
    public void Run_FaultyPage_NamesFileLineAndColumnAndCountsAtTheEnd()
    {
        Write("words.md", "---\nkind: wrods\nid: words\n---\n# Words\n");
        (int code, string output, string error) = Run(folder + "/");
        Assert.Equal((1, ""), (code, error));
        Assert.Contains(
            $"{folder.Replace('\\', '/')}/words.md:2:7: error[unknown-kind]: `wrods` is not a kind of page\n  page   Words, at its head\n  words  kind: ⟦wrods⟧\n", output);
        Assert.EndsWith("\n1 page, 7 errors, 0 warnings\n", output);
    }

    [Fact]
    public void Run_BytesThatAreNoText_AreADiagnostic()
    {
        File.WriteAllBytes(
            Path.Combine(folder, "words.md"), [.. "---\nkind: words\nid: words\n---\n# W"u8, 0xE9, .. "rds\n"u8]);
        Assert.Contains("/words.md:5:4: error[unreadable-character]: ", Run(folder).Output);
    }

    // As an editor saves it that means UTF-16 by "Unicode", with its mark at the beginning and without.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Run_PageSavedAsUtf16_SaysSoAndNothingElseOfIt(bool isMarked)
    {
        var utf16 = new UnicodeEncoding(bigEndian: false, byteOrderMark: isMarked);
        File.WriteAllBytes(Path.Combine(folder, "words.md"),
            [.. utf16.GetPreamble(), .. utf16.GetBytes("---\nkind: words\nid: words\n---\n# Words\n")]);
        string[] found =
            [.. Run(folder).Output.Split('\n').Where(line => line.Contains("/words.md:", StringComparison.Ordinal))];
        Assert.Matches("/words.md:1:[12]: error\\[unreadable-character\\]: ", Assert.Single(found));
        Assert.Contains("as UTF-16 or as no text at all", Run(folder).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_FilesThatAreNoPages_AreLeftAlone()
    {
        Write("notes.txt", "not a page");
        Assert.EndsWith("\n0 pages, 7 errors, 0 warnings\n", Run(folder).Output);
    }

    private void Write(string name, string text) => File.WriteAllText(Path.Combine(folder, name), text, Encoding.UTF8);

    private static (int Code, string Output, string Error) Run(string folder)
    {
        var output = new StringWriter();
        var error = new StringWriter();
        return (ContentCheck.Run(folder, output, error), output.ToString(), error.ToString());
    }
}
