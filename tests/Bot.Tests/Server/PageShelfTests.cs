using DxAssistant.Bot.Tests.Cases;
using DxAssistant.Knowledge.Content;
using DxAssistant.Server.Content;

namespace DxAssistant.Bot.Tests.Server;

/// <summary>Reading what was told to have changed gives the folder that reading everything gives.</summary>
public sealed class PageShelfTests : IDisposable
{
    private readonly TemporaryFolder folder = new();
    private readonly PageShelf shelf = new();

    public PageShelfTests()
    {
        Write("index.md", "# Index");
        Write("faults/one.md", "# One");
        Write("faults/two.md", "# Two");
        Write("faults/two-more.md", "# Two more");
        shelf.Read(folder.Path);
    }

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Read_PageChanged_ReadsItAndKeepsTheOthers()
    {
        ContentFile other = shelf.Read(folder.Path, []).File("faults/one.md")!;
        Write("faults/two.md", "# Two, edited");
        ContentFolder now = shelf.Read(folder.Path, ["faults/two.md"]);
        AssertWhole(now);
        Assert.Same(other, now.File("faults/one.md"));
    }

    [Fact]
    public void Read_PageCame_IsThere()
    {
        Write("checks/new.md", "# New\r\nwith line ends");
        AssertWhole(shelf.Read(folder.Path, ["checks/new.md"]));
    }

    [Fact]
    public void Read_PageWent_IsGone()
    {
        File.Delete(folder.File("faults/one.md"));
        AssertWhole(shelf.Read(folder.Path, ["faults/one.md"]));
    }

    [Fact]
    public void Read_PageGotAnotherName_HasTheNewOneOnly()
    {
        File.Move(folder.File("faults/one.md"), folder.File("faults/uno.md"));
        AssertWhole(shelf.Read(folder.Path, ["faults/one.md", "faults/uno.md"]));
    }

    [Fact]
    public void Read_FolderGotAnotherName_HasItsPagesThere()
    {
        Directory.Move(folder.File("faults"), folder.File("more"));
        AssertWhole(shelf.Read(folder.Path, ["faults", "more"]));
    }

    [Fact]
    public void Read_FolderWentAndNoiseOfEditors_IsWhatIsThere()
    {
        Directory.Delete(folder.File("faults"), recursive: true);
        Write("index.md.new", "half of");
        Write(".index.md.swp", "noise");
        AssertWhole(shelf.Read(folder.Path, ["faults", "index.md.new", ".index.md.swp", "never-there"]));
    }

    [Fact]
    public void Read_ChangedBesideWhatWasTold_IsFoundByReadingAll()
    {
        Write("faults/one.md", "# One, edited quietly");
        shelf.Read(folder.Path, []);
        AssertWhole(shelf.Read(folder.Path));
    }

    // Two saves may fall into one tick of the file system's clock.
    [Fact]
    public void Read_ChangedWithoutAnotherLengthOrTime_IsReadWhenTold()
    {
        DateTime written = File.GetLastWriteTimeUtc(folder.File("faults/one.md"));
        Write("faults/one.md", "# Two");
        File.SetLastWriteTimeUtc(folder.File("faults/one.md"), written);
        Assert.Equal("# Two", shelf.Read(folder.Path, ["faults/one.md"]).File("faults/one.md")!.Text);
    }

    [Fact]
    public void Read_ToldAndNotChanged_IsTheFolderOfLastTime() =>
        Assert.Same(shelf.Read(folder.Path, []), shelf.Read(folder.Path, ["faults/one.md"]));

    private void AssertWhole(ContentFolder now) =>
        Assert.Equal(ContentFolderReader.Read(folder.Path).Files.AsEnumerable(), now.Files);

    private void Write(string path, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(folder.File(path))!);
        File.WriteAllText(folder.File(path), text);
    }
}
