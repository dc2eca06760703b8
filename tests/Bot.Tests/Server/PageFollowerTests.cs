using System.Collections.Concurrent;
using DxAssistant.Bot.Tests.Cases;
using DxAssistant.Server.Serving;

namespace DxAssistant.Bot.Tests.Server;

/// <summary>A save is read at once and used when it is whole.</summary>
public sealed class PageFollowerTests : IDisposable
{
    private readonly TemporaryFolder folder = new();
    private readonly ConcurrentQueue<string> used = [];
    private readonly string page;

    public PageFollowerTests()
    {
        page = folder.File("page.md");
        File.WriteAllText(page, "before");
    }

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task Save_InOneStep_IsReadAndUsed()
    {
        using PageFollower follower = Follow();
        File.WriteAllText(page, "after");
        await UntilAsync(() => used.LastOrDefault() == "after");
    }

    // The second half is written while the first is being read: what was read of the first is never used.
    [Fact]
    public async Task Save_InTwoSteps_HalfOfItIsNeverUsed()
    {
        bool isHalf = true;
        var clock = new StillClock();
        ConcurrentQueue<string> seen = [];
        using PageFollower follower = Follow(read =>
        {
            seen.Enqueue(read);
            if (read != "half" || !isHalf) return;
            isHalf = false;
            File.WriteAllText(page, "whole");
        }, clock);
        File.WriteAllText(page, "half");
        await UntilAsync(() => seen.LastOrDefault() == "whole");
        Assert.Empty(used);
        await UntilAsync(() =>
        {
            clock.Pass(TimeSpan.FromSeconds(1));
            return used.LastOrDefault() == "whole";
        });
        Assert.DoesNotContain("half", used);
    }

    // As most editors save: emptied and then written, or put away and made anew. Reading what is in between would be
    // for nothing.
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task Save_ThatEmptiesOrMovesThePageFirst_IsReadOnceWhole(bool moves)
    {
        var clock = new StillClock();
        ConcurrentQueue<string> seen = [];
        using PageFollower follower = Follow(seen.Enqueue, clock);
        if (moves) File.Move(page, page + "~");
        else File.WriteAllText(page, "");
        await Task.Delay(100);
        Assert.Empty(seen);
        File.WriteAllText(page, "whole");
        await UntilAsync(() =>
        {
            clock.Pass(TimeSpan.FromMilliseconds(10));
            return used.LastOrDefault() == "whole";
        });
        Assert.Equal("whole", Assert.Single(seen.Distinct()));
    }

    [Fact]
    public async Task Page_EmptiedForGood_IsReadAfterTheQuiet()
    {
        using PageFollower follower = Follow();
        File.WriteAllText(page, "");
        await UntilAsync(() => used.LastOrDefault() == "");
    }

    [Fact]
    public async Task Save_ThatCannotBeTaken_IsTold_AndTheNextIsFollowed()
    {
        var notes = new StringWriter();
        using PageFollower follower = Follow(read =>
        {
            if (read == "bad") throw new InvalidOperationException("no such thing");
        }, notes: notes);
        File.WriteAllText(page, "bad");
        await UntilAsync(() => notes.ToString().Contains("no such thing", StringComparison.Ordinal));
        File.WriteAllText(page, "good");
        await UntilAsync(() => used.LastOrDefault() == "good");
    }

    [Fact]
    public async Task Save_AfterAnother_IsUsedToo()
    {
        using PageFollower follower = Follow();
        foreach (string text in (string[])["one", "two", "three"])
        {
            File.WriteAllText(page, text);
            await UntilAsync(() => used.LastOrDefault() == text);
        }
    }

    [Fact]
    public async Task Dispose_WhileASaveIsRead_UsesNothingMore()
    {
        var reading = new TaskCompletionSource();
        var isOver = new ManualResetEventSlim();
        var isRead = new TaskCompletionSource();
        PageFollower follower = Follow(_ =>
        {
            reading.TrySetResult();
            isOver.Wait(TimeSpan.FromMinutes(1));
            isRead.TrySetResult();
        });
        File.WriteAllText(page, "after");
        await reading.Task.WaitAsync(TimeSpan.FromMinutes(1));
        follower.Dispose();
        isOver.Set();
        await isRead.Task.WaitAsync(TimeSpan.FromMinutes(1));
        Assert.Empty(used);
    }

    private PageFollower Follow(Action<string>? whileRead = null, TimeProvider? clock = null,
        TextWriter? notes = null) => new(folder.Path, changed =>
    {
        if (changed is not null) Assert.Contains("page.md", changed);
        string read = File.ReadAllText(page);
        whileRead?.Invoke(read);
        return () => used.Enqueue(read);
    }, clock ?? TimeProvider.System, TextWriter.Synchronized(notes ?? TextWriter.Null));

    // Bounded, so that a follower that never calls fails the test instead of hanging it.
    private static async Task UntilAsync(Func<bool> there)
    {
        for (int i = 0; i < 1200 && !there(); i++) await Task.Delay(50);
        Assert.True(there());
    }
}
