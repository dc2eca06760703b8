using DxAssistant.Knowledge.Content;

namespace DxAssistant.Knowledge.Tests.Content;

public class LibraryFiguresTests
{
    private static readonly string File = Path.Combine(RepositoryFolder.Root(), "knowledge/Content/LIBRARY.md");
    private static readonly ContentFolder Folder = RepositoryFolder.Read("content");

    [Fact]
    public void Page_OfTheShippedLibrary_IsTheOneInTheRepository()
    {
        string page = LibraryFigures.Page(ContentCompiler.Compile(Folder).Library!, Folder);
        if (Environment.GetEnvironmentVariable("DX_UPDATE") == "1") System.IO.File.WriteAllText(File, page);
        Assert.Equal(System.IO.File.ReadAllText(File), page);
    }

    // Counted by ear.
    [Theory]
    [InlineData("unit", 2)]
    [InlineData("breaker", 2)]
    [InlineData("temperature", 4)]
    [InlineData("pipe", 1)]
    [InlineData("cable", 2)]
    [InlineData("R-32", 1)]
    public void Of_Word_IsItsSyllables(string word, int syllables) => Assert.Equal(syllables, Syllables.Of(word));

    // The formula by hand: 0.39 · 6 + 11.8 · 8/6 − 15.59 = 2.48. "Is the unit on its bracket?" has 6 words, 8
    // syllables.
    [Fact]
    public void Grade_SixWordsOfEightSyllables_IsTwoAndAHalf() =>
        Assert.Equal(2.48, ReadingLevel.Of(["Is the unit on its bracket?"]).Grade, 0.005);
}
