using DxAssistant.Server.Content;

namespace DxAssistant.Server.Serving;

/// <summary>Has the pages of a folder read again after each save.</summary>
/// <remarks>
/// They are read and compiled at once, and put in use when the folder has been quiet for a moment, since editors write
/// a file in several steps: the wait costs nothing, and what was made of half a save is thrown away. A page that is
/// empty or gone is read after the quiet: most editors empty a file, or put another in its place, when they save it,
/// and pages without one of their ids are looked through as a whole, twice, for nothing.
/// </remarks>
internal sealed class PageFollower : IDisposable
{
    private static readonly TimeSpan Settle = TimeSpan.FromMilliseconds(50);
    private static readonly TimeSpan Look = TimeSpan.FromMilliseconds(5);

    private readonly Func<IReadOnlyCollection<string>?, Action> read;
    private readonly TimeProvider clock;
    private readonly string folder;
    private readonly ChangedPaths changed = new();
    private readonly Lock gate = new();
    private readonly PageWatch watch;
    private readonly TextWriter notes;
    private long last;
    private int noticed;
    private bool isAtWork;
    private bool isOver;

    /// <param name="read">
    /// Reads pages again, given the paths that changed or null for any, and gives what puts them in use.
    /// Called by one thread at a time.
    /// </param>
    public PageFollower(string folder, Func<IReadOnlyCollection<string>?, Action> read, TimeProvider clock,
        TextWriter notes)
    {
        (this.folder, this.read, this.clock, this.notes) = (folder, read, clock, notes);
        watch = new PageWatch(folder, Noticed, notes);
        watch.Begin();
    }

    /// <summary>Has everything read again with the next change: something could not be read.</summary>
    public void Again() => changed.Add(null);

    public void Dispose()
    {
        lock (gate) isOver = true;
        watch.Dispose();
    }

    private void Noticed(string? path)
    {
        changed.Add(path);
        lock (gate)
        {
            (last, noticed) = (clock.GetTimestamp(), noticed + 1);
            if (isAtWork || isOver) return;
            isAtWork = true;
        }

        _ = Task.Run(FollowAsync);
    }

    // Whatever goes wrong with one save, the next one is followed.
    private async Task FollowAsync()
    {
        try
        {
            await WorkAsync().ConfigureAwait(false);
        }
        catch (Exception error) when (Note(error))
        {
            Again();
            lock (gate) isAtWork = false;
        }
    }

    private bool Note(Exception error)
    {
        notes.WriteLine($"The pages could not be taken: {error}");
        return true;
    }

    private async Task WorkAsync()
    {
        int taken;
        Action use;
        do
        {
            await WholeAsync().ConfigureAwait(false);
            lock (gate) taken = noticed;
            use = read(changed.Take());
            while (Left(taken) is { } left) await Task.Delay(left, clock).ConfigureAwait(false);
        }
        while (!IsDone(taken, use));
    }

    // Until no page is empty or gone, or the folder was quiet with it.
    private async Task WholeAsync()
    {
        while (changed.Any(IsInBetween) && Left() is { } left)
            await Task.Delay(left < Look ? left : Look, clock).ConfigureAwait(false);
    }

    private bool IsInBetween(string path) =>
        Path.GetExtension(path) is ".md" or ".svg"
            && new FileInfo(Path.Combine(folder, path)) is { Exists: false } or { Length: 0 };

    private TimeSpan? Left()
    {
        lock (gate) return Left(noticed);
    }

    // Null when the folder was quiet long enough, or something came in that has to be read first.
    private TimeSpan? Left(int taken)
    {
        lock (gate)
        {
            TimeSpan left = Settle - clock.GetElapsedTime(last);
            return noticed == taken && !isOver && left > TimeSpan.Zero ? left : null;
        }
    }

    private bool IsDone(int taken, Action use)
    {
        lock (gate)
        {
            if (noticed != taken && !isOver) return false;
            if (!isOver) use();
            isAtWork = false;
            return true;
        }
    }
}
