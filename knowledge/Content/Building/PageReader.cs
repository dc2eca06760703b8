using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Content.Shapes;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Building;

/// <summary>Takes passages, fields and links from one page that all rules have passed.</summary>
internal sealed class PageReader(Page page, Pages pages, Shelf shelf)
{
    public string Id => page.Id;

    public Page Page => page;

    public Passage Title => Passage(page.Title!.Heading, page.Title);

    /// <summary>The paragraph under the title; the title when there is none.</summary>
    public Passage Summary => Passage(page.Summary ?? page.Title!.Heading, page.SummarySection ?? page.Title!);

    public Passage Passage(RichText text, Section section) => new(text.Text, Place(section));

    private PagePlace Place(Section section) => new(section.Path ?? page.Path, section.Name);

    /// <summary>Every paragraph and list item under a heading, in the order written; empty without the
    /// heading.</summary>
    public ImmutableArray<Passage> Passages(string heading) => page.Section(heading) is { } section
        ? [.. section.Paragraphs.Concat(section.Items).OrderBy(text => text.Span.Start)
            .Select(text => Passage(text, section))]
        : [];

    /// <summary>The pictures under a heading, each once, in the order written.</summary>
    public ImmutableArray<PagePicture> Pictures(string heading) =>
        [.. Section(heading).SelectMany(section => section.Pictures.Select(picture => Picture(picture, section)))];

    private PagePicture Picture(PageLink picture, Section section)
    {
        PictureFile file = pages.Picture(page, picture)!;
        return new PagePicture(file.Path, PictureBuilder.Build(file),
            new Passage(picture.Text, new PagePlace(page.Path, section.Name)),
            picture.Title.Length > 0 ? picture.Title : null);
    }

    /// <summary>The paragraphs under a heading as one passage.</summary>
    public Passage Joined(string heading)
    {
        Section section = page.Section(heading)!;
        return new Passage(string.Join(' ', section.Paragraphs.Select(text => text.Text)), Place(section));
    }

    /// <summary>The rows of the table under a heading; none without it.</summary>
    public ImmutableArray<T> Rows<T>(string heading, Func<TableRow, Section, T> read) =>
        page.Section(heading) is { Table: { } table } section
        ? [.. table.Rows.Select(row => read(row, section))]
        : [];

    /// <summary>The section with a heading, or nothing.</summary>
    public IEnumerable<Section> Section(string heading) => page.Sections.Where(section => section.Name == heading);

    public string? Field(string name) => page.Front!.Field(name)?.Text;

    public ImmutableArray<string> List(string name) =>
        [.. page.Front!.Field(name)?.Values.Select(value => value.Text) ?? []];

    public double Minutes(string name) => Number.Read(Field(name))!.Value;

    public ImmutableSortedSet<string> Series => List("series").ToImmutableSortedSet(StringComparer.Ordinal);

    /// <summary>The page of a kind that a text links to.</summary>
    public Page? Target(RichText text, PageKind kind) => pages.Target(page, text.Link, kind);

    /// <summary>The page of a kind that a link leads to.</summary>
    public Page? Target(PageLink link, PageKind kind) => pages.Target(page, link, kind);

    /// <summary>The pages of a kind that the list under a heading links to, each once.</summary>
    public IEnumerable<Page> Targets(string heading, PageKind kind) =>
        (page.Section(heading)?.Items ?? []).Select(item => Target(item, kind)).OfType<Page>().Distinct();

    /// <summary>The cautions of the page, those of deadly hazards first, each kind in the order written.</summary>
    public ImmutableArray<CautionPage> Cautions =>
        [.. Targets("Cautions", PageKind.Caution).Select(caution => shelf.Cautions[caution.Id])
            .OrderByDescending(caution => caution.IsDeadly)];

    public ImmutableArray<Source> Sources =>
        [.. (page.Section("Sources")?.Items ?? []).Select(SourceOf).OfType<Source>()];

    /// <summary>The source that a text links to, or null.</summary>
    public Source? SourceOf(RichText? text) => text?.Link?.Anchor is { } anchor
        ? shelf.Sources.GetValueOrDefault(anchor) : null;
}
