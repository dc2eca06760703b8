using DxAssistant.Knowledge.Content.Shapes;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Frame;

/// <summary>A section that the kind of page does not have, so that nobody would ever see it.</summary>
/// <example>Bad: <c>## Hows</c>. Good: <c>## How</c>.</example>
internal sealed class UnknownHeading : IContentRule
{
    public string Name => "unknown-heading";

    public string Meaning => "A section that the kind of page does not have, so that nobody would ever see it.";

    public bool IsAboutFrame => true;

    public RuleExample Bad { get; } = new("checks/fan-plug.md", """
        ## ⟦Hows⟧
        1. Press it home.
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
            foreach (Section section in page.Sections
                .Where(section => section.Level == 2 && kind.Section(section.Name) is null))
            {
                yield return page.Error(Name, section.Heading.Span,
                    $"a {kind.Word} page has no section `{section.Name}`",
                    NearestWord.HintOrList(section.Name, kind.Sections.Select(shape => shape.Heading)));
            }
        }
    }
}
