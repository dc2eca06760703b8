using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Shapes;

/// <summary>One section that a kind of page has.</summary>
/// <param name="LinksTo">The kind of page that each list item links to, or null.</param>
/// <param name="Columns">The heads of its table; empty when it has none or they are free.</param>
internal sealed record SectionShape(
    string Heading,
    SectionContent Content,
    bool Required = true,
    PageKind? LinksTo = null,
    ImmutableArray<ColumnShape> Columns = default)
{
    /// <summary>The field of the front matter with which the section must be there, or null.</summary>
    public string? RequiredWith { get; init; }

    /// <summary>True when pictures may stand under the heading.</summary>
    public bool TakesPictures { get; init; }

    /// <summary>True when this page must have the section.</summary>
    public bool IsRequiredOn(Page page) =>
        Required || (RequiredWith is not null && page.Front?.Field(RequiredWith) is not null);

    public ImmutableArray<ColumnShape> Heads => Columns.IsDefault ? [] : Columns;

    /// <summary>True when the heads of a table are those of the shape, in its order.</summary>
    public bool Fits(PipeTable table)
    {
        IEnumerable<string> written = table.Head.Cells.Select(cell => cell.Text);
        return written.SequenceEqual(Heads.Select(column => column.Head))
            || written.SequenceEqual(Heads.Where(column => !column.MayBeLeftOut).Select(column => column.Head));
    }

    public static SectionShape Sentence(string heading, bool required = true) =>
        new(heading, SectionContent.Sentence, required);

    public static SectionShape List(string heading, bool required = true, PageKind? linksTo = null) =>
        new(heading, SectionContent.List, required, linksTo);

    public static SectionShape Table(string heading, bool required, params ColumnShape[] columns) =>
        new(heading, SectionContent.Table, required, null, [.. columns]);
}
