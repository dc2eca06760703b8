using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Shapes;

/// <summary>What a kind of page consists of.</summary>
/// <param name="Folder">The folder its pages stand in, or null for a kind that is one page at the top.</param>
/// <param name="FreeSection">The shape of every section, for kinds whose headings are the author's own.</param>
/// <param name="NeedsSummary">True when a paragraph must follow the title.</param>
internal sealed record PageShape(
    PageKind Kind,
    string? Folder,
    ImmutableArray<FieldShape> Fields,
    ImmutableArray<SectionShape> Sections,
    SectionShape? FreeSection = null,
    bool NeedsSummary = false)
{
    /// <summary>The word that the front matter uses for the kind.</summary>
    public string Word => Kind.ToString().ToLowerInvariant();

    /// <summary>Where the page with this id stands.</summary>
    public string PathOf(string id) => Folder is null ? Word + ".md" : $"{Folder}/{id}.md";

    /// <summary>True when the path lies in the folder of the kind.</summary>
    public bool Holds(string path) => Folder is not null && path.StartsWith(Folder + "/", StringComparison.Ordinal);

    /// <summary>True when the page with this id stands at the path, without making the path.</summary>
    public bool IsPathOf(string path, string id) => Folder is null
        ? path == PathOf(id)
        : path.Length == Folder.Length + id.Length + 4 && path[Folder.Length] == '/'
            && path.StartsWith(Folder, StringComparison.Ordinal)
            && path.EndsWith(".md", StringComparison.Ordinal)
            && path.AsSpan(Folder.Length + 1, id.Length).SequenceEqual(id);

    public FieldShape? Field(string name) => Fields.FirstOrDefault(field => field.Name == name);

    /// <summary>The shape of the section with this heading, or null when the kind has none.</summary>
    public SectionShape? Section(string heading) =>
        FreeSection ?? Sections.FirstOrDefault(section => section.Heading == heading);
}
