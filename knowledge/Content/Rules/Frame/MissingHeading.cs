using DxAssistant.Knowledge.Content.Shapes;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Frame;

/// <summary>A section that the kind of page must have.</summary>
/// <example>Bad: <c>a refusal without ## Answer</c>. Good: <c>## Answer</c>.</example>
internal sealed class MissingHeading : IContentRule
{
    public string Name => "missing-heading";

    public string Meaning => "A section that the kind of page must have.";

    public bool IsAboutFrame => true;

    public RuleExample Bad { get; } = new("refusals/defeat-protection.md", """
        ---
        kind: refusal
        id: defeat-protection
        decision: refuse
        ---
        # ⟦Asked to defeat a protection⟧

        ## Said as
        - bypass the switch
        """);

    public RuleExample Good { get; } = new("refusals/defeat-protection.md", """
        ---
        kind: refusal
        id: defeat-protection
        decision: refuse
        ---
        # Asked to defeat a protection

        ## Said as
        - bypass the switch

        ## Answer
        No. It can kill.
        """);

    public IEnumerable<Diagnostic> Check(Pages pages)
    {
        foreach (Page page in pages.All.Where(page => page.Kind is not null && page.Title is not null))
        {
            foreach (SectionShape shape in PageShapes.Of(page.Kind!.Value).Sections.Where(shape =>
                shape.IsRequiredOn(page)))
            {
                if (page.Section(shape.Heading) is null && !IsMisspelt(page, shape.Heading))
                {
                    yield return page.Error(Name, page.Title!.Heading.Span,
                        $"the {page.Kind.Value.ToString().ToLowerInvariant()} page has no `## {shape.Heading}`");
                }
            }
        }
    }

    // UnknownHeading reports the misspelt heading and says how to write it.
    internal static bool IsMisspelt(Page page, string heading)
    {
        PageShape kind = PageShapes.Of(page.Kind!.Value);
        return page.Sections.Any(section => kind.Section(section.Name) is null
            && NearestWord.Find(section.Name, kind.Sections.Select(shape => shape.Heading)) == heading);
    }
}
