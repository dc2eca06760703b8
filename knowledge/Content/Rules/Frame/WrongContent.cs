using DxAssistant.Knowledge.Content.Shapes;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Frame;

/// <summary>A section without the list, table or sentence that belongs there.</summary>
/// <example>Bad: <c>## How, then a paragraph</c>. Good: <c>## How, then a numbered list</c>.</example>
internal sealed class WrongContent : IContentRule
{
    public string Name => "wrong-content";

    public string Meaning => "A section without the list, table or sentence that belongs there.";

    public bool NeedsFrame => true;

    public RuleExample Bad { get; } = new("checks/fan-plug.md", """
        ## ⟦How⟧
        Press it home.
        """);

    public RuleExample Good { get; } = new("checks/fan-plug.md", """
        ## How
        1. Press it home.
        """);

    public IEnumerable<Diagnostic> Check(Pages pages)
    {
        foreach (Page page in pages.All.Where(page => page.Kind is not null))
        {
            PageShape kind = PageShapes.Of(page.Kind!.Value);
            foreach (Section section in page.Sections.Where(section => section.Level == 2))
            {
                if (kind.Section(section.Name) is { } shape && Missing(shape, section) is { } missing
                    && !HoldsHtml(page, section))
                {
                    yield return page.Error(Name, section.Heading.Span, $"`## {section.Name}` has no {missing}",
                        Help(shape));
                }
            }
        }
    }

    private static string? Missing(SectionShape shape, Section section) => shape.Content switch
    {
        SectionContent.Table when section.Table is null => "table",
        SectionContent.List when section.Items.IsEmpty => "list",
        SectionContent.Sentence when section.Paragraphs.IsEmpty => "sentence",
        SectionContent.Any when section.IsEmpty => "text",
        _ => null,
    };

    // What stands in a comment is not seen; HtmlInPage reports it.
    private static bool HoldsHtml(Page page, Section section)
    {
        int start = section.Heading.Span.Start;
        int end = page.WrittenSections.Select(other => other.Heading.Span.Start).Where(other => other > start)
            .DefaultIfEmpty(int.MaxValue).Min();
        return page.Html.Any(html => html.Start > start && html.Start < end);
    }

    private static string? Help(SectionShape shape) => shape.Content == SectionContent.List
        ? "begin each line with `- `"
        : shape.Heads.IsEmpty ? null
        : "start the table with `| " + string.Join(" | ", shape.Heads.Select(column => column.Head)) + " |`";
}
