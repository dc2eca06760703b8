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
            watcher.EnableRaisingEvents = true;
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException or ArgumentException)
        {
            notes.WriteLine(
                $"The pages are not watched ({error.Message}): start the program again after a change.");
        }
    }

    /// <summary>Begins anew after the system lost count of the changes: any page may have changed since.</summary>
    public void Missed(Exception error)
    {
        notes.WriteLine($"Some changes of the pages were missed ({error.Message}): reading all of them again.");
        watcher?.Dispose();
        Begin();
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
        if (name?.EndsWith(".md", StringComparison.OrdinalIgnoreCase) == true) noticed();
    }
}
