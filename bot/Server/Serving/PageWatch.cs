namespace DxAssistant.Server.Serving;

/// <summary>Notices when pages of a folder change, or folders of pages come, go or get another name.</summary>
/// <param name="noticed">
/// Told the path below the folder, of a page or of a folder; null when anything may have changed.
/// </param>
internal sealed class PageWatch(string folder, Action<string?> noticed, TextWriter notes) : IDisposable
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
        noticed(null);
    }

    public void Dispose() => watcher?.Dispose();

    private FileSystemWatcher Make()
    {
        // All names, not *.md alone: of a folder that goes, only the folder's own name is told.
        var made = new FileSystemWatcher(folder) { IncludeSubdirectories = true };
        made.Changed += (_, change) => Changed(change.Name);
        made.Created += (_, change) => noticed(change.Name);
        made.Deleted += (_, change) => noticed(change.Name);
        made.Renamed += (_, change) => { noticed(change.OldName); noticed(change.Name); };
        made.Error += (_, failure) => Missed(failure.GetException());
        return made;
    }

    private void Changed(string? name)
    {
        if (Path.GetExtension(name) is ".md" or ".svg") noticed(name);
    }
}
