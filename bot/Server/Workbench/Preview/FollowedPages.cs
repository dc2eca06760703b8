using DxAssistant.Server.Content;
using DxAssistant.Server.Serving;

namespace DxAssistant.Server.Workbench.Preview;

/// <summary>Has previewed pages compiled again soon after each save.</summary>
internal sealed class FollowedPages : IDisposable
{
    // Editors write a file in several steps.
    private static readonly TimeSpan Settle = TimeSpan.FromMilliseconds(50);

    private readonly PreviewPages pages;
    private readonly TextWriter notes;
    private readonly ChangedPaths changed = new();
    private readonly ITimer settled;
    private readonly PageWatch watch;

    /// <param name="folder">Where the pages stand.</param>
    public FollowedPages(PreviewPages pages, string folder, TextWriter notes)
    {
        (this.pages, this.notes) = (pages, notes);
        settled = TimeProvider.System.CreateTimer(_ => Reload(), null, Timeout.InfiniteTimeSpan, Timeout.InfiniteTimeSpan);
        watch = new PageWatch(folder, Noticed, notes);
        watch.Begin();
    }

    public void Dispose()
    {
        watch.Dispose();
        settled.Dispose();
    }

    private void Noticed(string? path)
    {
        changed.Add(path);
        settled.Change(Settle, Timeout.InfiniteTimeSpan);
    }

    // Pages that could not be read are read again at the next change.
    private void Reload()
    {
        try
        {
            pages.Reload(changed.Take());
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            changed.Add(null);
            notes.WriteLine($"The pages could not be read ({error.Message}).");
        }
    }
}
