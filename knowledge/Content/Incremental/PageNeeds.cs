using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Incremental;

/// <summary>What the rules looked up besides a page: when none of it changes, what they found stays.</summary>
internal sealed class PageNeeds
{
    private readonly HashSet<string> paths = new(StringComparer.Ordinal);
    private readonly HashSet<PageKind> kinds = [];
    private bool ids;
    private bool pictures;

    /// <summary>The page at a path was looked up, whether or not it is there.</summary>
    public void Path(string path) => paths.Add(path);

    /// <summary>All pages of a kind were looked up.</summary>
    public void Kind(PageKind kind) => kinds.Add(kind);

    /// <summary>It was looked up which pages there are, by path or id.</summary>
    public void Ids() => ids = true;

    public void Pictures() => pictures = true;

    /// <summary>True when a change can change what was found.</summary>
    public bool Meet(FolderChange change)
    {
        if ((ids && change.Ids) || (pictures && change.Pictures)) return true;
        foreach (PageKind kind in change.Kinds) if (kinds.Contains(kind)) return true;
        foreach (string path in change.Paths) if (paths.Contains(path)) return true;
        return false;
    }
}
