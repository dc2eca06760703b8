using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Incremental;

/// <summary>How a folder differs from the one before.</summary>
/// <param name="Paths">Pages that came, went or changed.</param>
/// <param name="Kinds">Kinds of which a page came, went or changed.</param>
/// <param name="Ids">True when pages came or went, or one has another kind or id.</param>
/// <param name="Pictures">True when any picture came, went or changed.</param>
internal sealed record FolderChange(IReadOnlySet<string> Paths, IReadOnlySet<PageKind> Kinds, bool Ids, bool Pictures)
{
    /// <param name="before">The pages before, by path.</param>
    /// <param name="after">The pages now; those that did not change are the same objects.</param>
    public static FolderChange Of(
        IReadOnlyDictionary<string, Page> before, IReadOnlyDictionary<string, Page> after, bool pictures)
    {
        HashSet<string> paths = new(StringComparer.Ordinal);
        foreach ((string path, Page page) in after)
            if (!ReferenceEquals(before.GetValueOrDefault(path), page)) paths.Add(path);
        foreach (string path in before.Keys) if (!after.ContainsKey(path)) paths.Add(path);
        (Page? Old, Page? New)[] pairs = [.. paths.Select(path => (before.GetValueOrDefault(path), after.GetValueOrDefault(path)))];
        return new FolderChange(
            paths, pairs.SelectMany(pair => new[] { pair.Old?.Kind, pair.New?.Kind }).OfType<PageKind>().ToHashSet(),
            pairs.Any(pair => pair.Old?.Kind != pair.New?.Kind || pair.Old?.Id != pair.New?.Id || pair.Old is null || pair.New is null), pictures);
    }
}
