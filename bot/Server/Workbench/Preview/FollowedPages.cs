using DxAssistant.Server.Serving;

namespace DxAssistant.Server.Workbench.Preview;

/// <summary>Has previewed pages compiled again after each save.</summary>
internal sealed class FollowedPages : IDisposable
{
    private readonly PreviewPages pages;
    private readonly TextWriter notes;
    private readonly PageFollower follower;

    /// <param name="folder">Where the pages stand.</param>
    public FollowedPages(PreviewPages pages, string folder, TextWriter notes)
    {
        (this.pages, this.notes) = (pages, notes);
        follower = new PageFollower(folder, Read, TimeProvider.System, notes);
    }

    public void Dispose() => follower.Dispose();

    private Action Read(IReadOnlyCollection<string>? changed)
    {
        try
        {
            return pages.Read(changed);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            follower.Again();
            return () => notes.WriteLine($"The pages could not be read ({error.Message}).");
        }
    }
}
