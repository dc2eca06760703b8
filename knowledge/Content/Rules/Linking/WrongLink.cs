using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Shapes;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Linking;

/// <summary>A list item or cell that must link to a page of a certain kind and does not.</summary>
/// <example>Bad: <c>- Live mains</c>. Good: <c>- [Live mains](../cautions/live-mains.md)</c>.</example>
internal sealed class WrongLink : IContentRule
{
    public string Name => "wrong-link";

    public string Meaning => "A list item or cell that must link to a page of a certain kind and does not.";

    public bool NeedsFrame => true;

    public RuleExample Bad { get; } = new("checks/fan-plug.md", """
        ## Cautions
        - ⟦Live mains⟧
        """);

    public RuleExample Good { get; } = new("checks/fan-plug.md", """
        ## Cautions
        - [Live mains](../cautions/live-mains.md)
        """);

    public ImmutableArray<ExamplePair> More { get; } =
    [
        new ExamplePair(
            new RuleExample("faults/fan-plug-loose.md", """
            ## Repair
            - [Seat the plug](⟦https://example.com/seat-plug.md⟧)
            """),
            new RuleExample("faults/fan-plug-loose.md", """
            ## Repair
            - [Seat the plug](../repairs/seat-plug.md)
            """)),
    ];

    public IEnumerable<Diagnostic> Check(Pages pages) =>
        from page in pages.All
        where page.Kind is not null
        from section in page.Sections
        let shape = PageShapes.Of(page.Kind!.Value).Section(section.Name)
        where shape is not null
        from place in Places(shape, section)
        let found = Check(pages, page, place.Text, place.Kind)
        where found is not null
        select found;

    // Each text that must link, with the kind it must link to.
    private static IEnumerable<(RichText Text, PageKind Kind)> Places(SectionShape shape, Section section)
    {
        if (shape.LinksTo is { } kind)
        {
            return section.Items.Select(item => (item, kind));
        }

        return section.Table is { } table && !shape.Heads.IsEmpty && shape.Fits(table)
            ? from row in table.Rows
              from column in Enumerable.Range(0, Math.Min(row.Cells.Length, shape.Heads.Length))
              where shape.Heads[column].LinksTo is not null && !row.Cells[column].IsEmpty
              select (row.Cells[column], shape.Heads[column].LinksTo!.Value)
            : [];
    }

    private Diagnostic? Check(Pages pages, Page page, RichText text, PageKind kind)
    {
        string word = PageShapes.Of(kind).Word;
        if (text.Link is null)
        {
            return page.Error(Name, text.Span, $"`{text.Text}` does not link to a {word} page");
        }

        if (text.Link.LeadsOutside)
        {
            return page.Error(Name, text.Link.TargetSpan,
                $"`{text.Link.Target}` leads out of the pages, not to a {word} page");
        }

        // A link to nowhere is BrokenLink's, a page of unknown kind UnknownKind's.
        Page? target = pages.Target(page, text.Link);
        return target?.Kind is { } actual && actual != kind
            ? page.Error(Name, text.Link.TargetSpan,
                $"`{target.Path}` is a {PageShapes.Of(actual).Word} page, not a {word} page")
            : null;
    }
}
