using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Incremental;

/// <summary>How a folder differs from the one before.</summary>
/// <param name="Paths">Pages that came, went or changed.</param>
/// <param name="Kinds">Kinds of which a page came, went or changed.</param>
/// <param name="Ids">True when pages came or went, or one has another kind or id.</param>
/// <param name="Pictures">True when any picture came, went or changed.</param>
internal sealed record FolderChange(ImmutableArray<string> Paths, ImmutableArray<PageKind> Kinds, bool Ids,
    bool Pictures)
{
    /// <param name="pairs">Pages that came, went or changed, as they were and as they are.</param>
    public static FolderChange Of(IReadOnlyCollection<(Page? Old, Page? New)> pairs, bool pictures) => new(
        [.. pairs.Select(pair => (pair.New ?? pair.Old)!.Path)],
        [.. pairs.SelectMany(pair => new[] { pair.Old?.Kind, pair.New?.Kind }).OfType<PageKind>().Distinct()],
        pairs.Any(pair => pair.Old?.Kind != pair.New?.Kind || pair.Old?.Id != pair.New?.Id || pair.Old is null
            || pair.New is null),
        pictures);
}
