using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules;

/// <summary>A page that does not begin with a title.</summary>
/// <example>Bad: <c>Is the plug home?</c>. Good: <c>Is the plug home?</c>.</example>
internal sealed class MissingTitle : IContentRule
{
    public string Name => "missing-title";

    public RuleExample Bad { get; } = new("checks/fan-plug.md", """
        ⟦##⟧ Ask
        Is the plug home?
        """);

    public RuleExample Good { get; } = new("checks/fan-plug.md", """
        # Fan plug

        ## Ask
        Is the plug home?
        """);

    public IEnumerable<Diagnostic> Check(Pages pages) => pages.All
        .Where(page => page.Kind is not null && (page.Title is null || page.Title.Heading.IsEmpty))
        .Select(page => page.Error(Name, PlaceIn(page), "the page has no title",
            "put a line `# Title` right after the front matter"));

    private static TextSpan PlaceIn(Page page) =>
        page.Title?.Heading.Span ?? (page.Sections.IsEmpty ? default : page.Sections[0].Heading.Span);
}
