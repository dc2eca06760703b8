using DxAssistant.Knowledge.Content.Shapes;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Frame;

/// <summary>A heading that is neither the title nor a section of the second level.</summary>
/// <example>Bad: <c>### Where</c>. Good: <c>## How</c>.</example>
internal sealed class WrongHeadingLevel : IContentRule
{
    public string Name => "wrong-heading-level";

    public string Meaning => "A heading that is neither the title nor a section of the second level.";

    public bool IsAboutFrame => true;

    public RuleExample Bad { get; } = new("checks/fan-plug.md", """
        ## How
        1. Press it home.

        ### ⟦Where⟧
        Upper right.
        """);

    public RuleExample Good { get; } = new("checks/fan-plug.md", """
        ## How
        1. Press it home, upper right.
        """);

    public IEnumerable<Diagnostic> Check(Pages pages) => pages.All.Where(page => page.Kind is not null)
        .SelectMany(page => page.WrittenSections.Where(section => section.Level != 2).Select(section => page.Error(
            Name, section.Heading.Span,
            section.Level == 1 ? "a page has only one title" : $"a heading of level {section.Level} stands in the page",
            "a page is `# Title` and then `## Section`s") with { Mend = MendOf(page, section) }));

    // A section that the page lacks and its kind has is meant as that section, whatever its level.
    private static Mend? MendOf(Page page, Section section)
    {
        PageShape kind = PageShapes.Of(page.Kind!.Value);
        bool isSection = kind.FreeSection is null && kind.Section(section.Name) is not null
            && page.WrittenSections.Count(other => other.Name == section.Name) == 1;
        int signs = page.Source.Text.LastIndexOf('\n', Math.Max(0, section.Heading.Span.Start - 1)) + 1;
        TextSpan before = TextSpan.Between(signs, section.Heading.Span.Start);
        return isSection && page.Source.Slice(before).Trim().All(c => c == '#')
            ? new Mend(page.Source.At(before), "## ")
            : null;
    }
}
