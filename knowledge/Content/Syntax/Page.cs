using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Languages;

namespace DxAssistant.Knowledge.Content.Syntax;

/// <summary>A page as written, before anybody asks whether it makes sense.</summary>
internal sealed class Page
{
    private ImmutableArray<string?> linked;
    private string? language;
    private string? id;

    public required SourceText Source { get; init; }

    /// <summary>Null when the page has none, or was not parsed.</summary>
    public FrontMatter? Front { get; init; }

    /// <summary>Null when it cannot be told; every rule about kinds then leaves the page alone.</summary>
    public PageKind? Kind { get; init; }

    /// <summary>The first text under the title, before any section.</summary>
    public RichText? Summary { get; init; }

    /// <summary>The title and everything up to the first section, or null when the page has no title.</summary>
    public Section? Title { get; init; }

    /// <summary>The sections after the title, of any level, in the order written; those with one name are
    /// joined.</summary>
    public ImmutableArray<Section> Sections { get; init; } = [];

    /// <summary>The same sections as written, not joined.</summary>
    public ImmutableArray<Section> WrittenSections { get; init; } = [];

    public ImmutableArray<PageLink> Links { get; init; } = [];

    /// <summary>
    /// The paths that <see cref="Links"/> mean, in their order; null for one that leads outside the folder.
    /// </summary>
    public ImmutableArray<string?> LinkedPaths =>
        linked.IsDefault ? linked = [.. Links.Select(link => link.LeadsOutside ? null : link.PathFrom(Path))] : linked;

    /// <summary>All pictures, wherever they stand.</summary>
    public ImmutableArray<PageLink> Pictures { get; init; } = [];

    public ImmutableArray<TextSpan> Html { get; init; } = [];

    /// <summary>Text before the title, code and the like: what no section takes in.</summary>
    public ImmutableArray<TextSpan> Unread { get; init; } = [];

    /// <summary>Why the page was not parsed at all, or null.</summary>
    public string? Unparsed { get; init; }

    public string Path => Source.Path;

    /// <summary>The language this page says another page in, or null for a page of its own.</summary>
    public string? Language => (language ??= LanguageOfPath.Of(Path) ?? "") is { Length: > 0 } tag ? tag : null;

    /// <summary>The section that <see cref="Summary"/> counts to, when it is not the title.</summary>
    public Section? SummarySection { get; init; }

    /// <summary>The file's name without folder and <c>.md</c>: the id the page should have.</summary>
    public string FileId => System.IO.Path.GetFileNameWithoutExtension(Path);

    /// <summary>The id of the front matter, or else the file's name.</summary>
    public string Id => id ??= Front?.Field("id")?.Text ?? FileId;

    /// <summary>The id, or else the start of the page: where a fault of the whole page is shown.</summary>
    public TextSpan IdSpan => Front?.Field("id") is { } id ? id.Span : Title?.Heading.Span ?? default;

    public Section? Section(string heading) => Sections.FirstOrDefault(section => section.Name == heading);

    /// <summary>An error at a place of this page.</summary>
    public Diagnostic Error(string name, TextSpan at, string message, Remedy? remedy = null) =>
        Source.Error(name, at, message, remedy);
}
