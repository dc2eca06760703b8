using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Shapes;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules;

/// <summary>What one page adds to the question which pages are mentioned nowhere.</summary>
/// <param name="Path">The page.</param>
internal sealed record Mention(string Path)
{
    /// <summary>
    /// True when the page could not be read well enough to know what it mentions: nobody is blamed then.
    /// </summary>
    public bool IsUnclear { get; init; }

    /// <summary>The paths it mentions.</summary>
    public ImmutableArray<string> Paths { get; init; } = [];

    /// <summary>The paths that its broken links were probably meant for: those are not blamed either.</summary>
    public ImmutableArray<string> Meant { get; init; } = [];

    /// <summary>What is wrong when no page mentions this one; null when it need not be mentioned.</summary>
    public Diagnostic? IfNowhere { get; init; }

    /// <summary>The kind and id, for pages that may be there twice.</summary>
    public (PageKind? Kind, string Id) Is { get; init; }

    public static Mention Of(Page page, Pages pages) =>
        new(page.Path) { Meant = [.. pages.MeantOn(page)], Is = (page.Kind, page.Id) };

    /// <summary>What is wrong with pages that are mentioned nowhere.</summary>
    public static IEnumerable<Diagnostic> Nowhere(IEnumerable<Mention> all)
    {
        if (all.Any(page => page.IsUnclear)) return [];
        HashSet<string> mentioned = new(all.SelectMany(page => page.Paths.Concat(page.Meant)), StringComparer.Ordinal);
        return Blamed([.. all.Where(page => page.IfNowhere is not null && !mentioned.Contains(page.Path))], all);
    }

    /// <summary>
    /// What is wrong with pages that were left; one whose id is that of another is blamed for that alone.
    /// </summary>
    public static IEnumerable<Diagnostic> Blamed(IReadOnlyList<Mention> left, IEnumerable<Mention> all)
    {
        if (left.Count == 0) return [];
        ILookup<(PageKind?, string), Mention> same = all.ToLookup(page => page.Is);
        return left.Where(page => page.IsTheOneOf([.. same[page.Is]])).Select(page => page.IfNowhere!);
    }

    /// <summary>Of pages with one kind and id, the one that counts: that in its place, or else the first.</summary>
    public bool IsTheOneOf(IReadOnlyList<Mention> same) =>
        (same.FirstOrDefault(page => PageShapes.Of(page.Is.Kind!.Value).IsPathOf(page.Path, page.Is.Id))
            ?? same[0]) == this;

    public bool Equals(Mention? other) => other is not null && Path == other.Path && IsUnclear == other.IsUnclear
        && Is == other.Is && IfNowhere == other.IfNowhere && Paths.SequenceEqual(other.Paths)
        && Meant.SequenceEqual(other.Meant);

    public override int GetHashCode() => Path.GetHashCode(StringComparison.Ordinal);
}
