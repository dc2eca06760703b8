using DxAssistant.Bot.Tests.Cases;
using DxAssistant.Server.Content;
using DxAssistant.Server.Serving;

namespace DxAssistant.Bot.Tests.Server;

/// <summary>Pages are edited while the program runs.</summary>
public sealed class LiveContentTests : IDisposable
{
    private readonly TemporaryFolder folder = new();
    private readonly StringWriter notes = new() { NewLine = "\n" };

    public LiveContentTests()
    {
        foreach (string page in Directory.EnumerateFiles(Shipped.Folder, "*", SearchOption.AllDirectories))
        {
            string copy = folder.File(Path.GetRelativePath(Shipped.Folder, page));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(page, copy);
        }
    }

    public void Dispose()
    {
        notes.Dispose();
        folder.Dispose();
    }

    [Fact]
    public void Reload_PageIsBetter_IsUsedFromThenOn()
    {
        using var content = LiveContent.Open(folder.Path, notes)!;
        string before = content.Current.Version;
        Edit("phrases.md", "What is wrong?", "What is the trouble?");

        content.Reload();

        Assert.NotEqual(before, content.Current.Version);
        Assert.Contains(content.Current.Version, notes.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Reload_PageIsBroken_KeepsTheLastGoodOneAndSaysWhy()
    {
        using var content = LiveContent.Open(folder.Path, notes)!;
        var before = content.Current;
        Edit("index.md", "kind: index", "kind: nonsense");

        content.Reload();

        Assert.Same(before, content.Current);
        Assert.Contains("index.md:2:", notes.ToString(), StringComparison.Ordinal);
        Assert.Contains("going on with version", notes.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Reload_PageMayNotBeRead_KeepsTheLastGoodOneAndSaysWhy()
    {
        bool locked = false;
        using var content = LiveContent.Open(folder.Path, notes, (path, _) => locked
            ? throw new UnauthorizedAccessException("phrases.md is another account's")
            : ContentFolderReader.Read(path))!;
        var before = content.Current;
        locked = true;

        content.Reload();

        Assert.Same(before, content.Current);
        Assert.Contains("phrases.md is another account's", notes.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Watch_PageChangesOnDisk_IsNoticed()
    {
        using var content = LiveContent.Open(folder.Path, notes)!;
        string before = content.Current.Version;
        content.Watch(TimeProvider.System);
        Edit("phrases.md", "What is wrong?", "What is the trouble?");

        await UntilAsync(() => content.Current.Version != before);

        Assert.NotEqual(before, content.Current.Version);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task Watch_FolderOfPagesGoes_IsNoticed(bool deleted)
    {
        int noticed = 0;
        string pages = folder.File("more");
        Directory.CreateDirectory(pages);
        using var watch = new PageWatch(folder.Path, _ => Interlocked.Increment(ref noticed), notes);
        watch.Begin();

        if (deleted) Directory.Delete(pages);
        else Directory.Move(pages, folder.File("elsewhere"));

        await UntilAsync(() => noticed > 0);
        Assert.NotEqual(0, noticed);
    }

    [Fact]
    public async Task Watch_ChangesWereMissed_AreTakenInAndTheNextOnesAreNoticed()
    {
        int noticed = 0;
        using var watch = new PageWatch(folder.Path, _ => Interlocked.Increment(ref noticed), notes);
        watch.Begin();

        watch.Missed(new InternalBufferOverflowException("too many changes"));
        int atOnce = noticed;
        Edit("phrases.md", "What is wrong?", "What is the trouble?");
        await UntilAsync(() => noticed > atOnce);

        Assert.Equal(1, atOnce);
        Assert.True(noticed > atOnce);
        Assert.Contains("too many changes", notes.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Watch_FolderIsGone_SaysSoAndGoesOn()
    {
        using var watch = new PageWatch(folder.File("nowhere"), _ => { }, notes);

        watch.Begin();

        Assert.Contains("not watched", notes.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Open_ConversationLacksAPhrase_StartsNothingAndNamesIt()
    {
        Edit("phrases.md", "## ask-complaint\n", "## ask-complaint-elsewhere\n");

        Assert.Null(LiveContent.Open(folder.Path, notes));
        Assert.Contains("ask-complaint", notes.ToString(), StringComparison.Ordinal);
    }

    // Bounded, so that a watcher that never calls fails the test instead of hanging it.
    private static async Task UntilAsync(Func<bool> there)
    {
        for (int i = 0; i < 600 && !there(); i++) await Task.Delay(100);
    }

    private void Edit(string page, string text, string with)
    {
        string old = File.ReadAllText(folder.File(page));
        Assert.Contains(text, old, StringComparison.Ordinal);
        File.WriteAllText(folder.File(page), old.Replace(text, with, StringComparison.Ordinal));
    }
}
