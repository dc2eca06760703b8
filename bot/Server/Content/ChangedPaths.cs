namespace DxAssistant.Server.Content;

/// <summary>What changed below a folder since the pages were last read, gathered from any thread.</summary>
internal sealed class ChangedPaths
{
    private readonly Lock gate = new();
    private readonly HashSet<string> paths = new(StringComparer.Ordinal);
    private bool anything;

    /// <param name="path">Below the folder; null when anything may have changed.</param>
    public void Add(string? path)
    {
        lock (gate)
        {
            if (path is null) anything = true;
            else paths.Add(path);
        }
    }

    /// <summary>Whether a path gathered so is one of those looked for.</summary>
    public bool Any(Func<string, bool> lookedFor)
    {
        lock (gate) return paths.Any(lookedFor);
    }

    /// <summary>Takes what was gathered; null when anything may have changed.</summary>
    public IReadOnlyCollection<string>? Take()
    {
        lock (gate)
        {
            IReadOnlyCollection<string>? taken = anything ? null : [.. paths];
            anything = false;
            paths.Clear();
            return taken;
        }
    }
}
