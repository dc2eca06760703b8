namespace DxAssistant.Server.Serving;

/// <summary>Notices when pages of a folder change, or folders of pages come, go or get another name.</summary>
internal sealed class PageWatch(string folder, Action noticed, TextWriter notes) : IDisposable
{
    private FileSystemWatcher? watcher;

    /// <summary>Begins to watch; where that cannot be done, says so and goes on without.</summary>
    public void Begin()
    {
        try
        {
            watcher = Make();
            watcher.EnableRaisingEvents = true; // may tell of an error before it returns
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException or ArgumentException)
        {
            notes.WriteLine(
                $"The pages are not watched ({error.Message}): start the program again after a change.");
        }
    }

    /// <summary>Has all pages read again after the system lost count of the changes: any may have changed.</summary>
    /// <remarks>Never begins anew by itself: where there is no room for a watch, that fails the same way at once and
    /// without end.</remarks>
    public void Missed(Exception error)
    {
        bool goesOn = watcher is { EnableRaisingEvents: true };
        notes.WriteLine(
            $"Some changes of the pages were missed ({error.Message}): reading all of them again."
            + (goesOn ? "" : " From now on they are not watched: start the program again after a change."));
        noticed();
    }

    public void Dispose() => watcher?.Dispose();

    private FileSystemWatcher Make()
    {
        // All names, not *.md alone: of a folder that goes, only the folder's own name is told.
        var made = new FileSystemWatcher(folder) { IncludeSubdirectories = true };
        made.Changed += (_, change) => Changed(change.Name);
        made.Created += (_, _) => noticed();
        made.Deleted += (_, _) => noticed();
        made.Renamed += (_, _) => noticed();
        made.Error += (_, failure) => Missed(failure.GetException());
        return made;
    }

    private void Changed(string? name)
    {
        if (Path.GetExtension(name) is ".md" or ".svg") noticed();
    }
}
