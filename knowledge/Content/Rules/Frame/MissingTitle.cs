using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Frame;

/// <summary>A page that does not begin with a title.</summary>
/// <example>Bad: <c>## Danger right after the front matter</c>. Good: <c># Live mains</c>.</example>
internal sealed class MissingTitle : IContentRule
{
    public string Name => "missing-title";

    public string Meaning => "A page that does not begin with a title.";

    public bool IsAboutFrame => true;

    public RuleExample Bad { get; } = new("cautions/live-mains.md", """
        ---
        kind: caution
        id: live-mains
        ---

        ## ⟦Danger⟧
        It can kill.

        ## Do
        - Isolate.
        """);

    public RuleExample Good { get; } = new("cautions/live-mains.md", """
        ---
        kind: caution
        id: live-mains
        ---
        # Live mains

        ## Danger
        It can kill.

        ## Do
        - Isolate.
        """);

    public IEnumerable<Diagnostic> Check(Pages pages) => pages.All
        .Where(page => page.Kind is not null && (page.Title is null || page.Title.Heading.IsEmpty))
        .Select(page => page.Error(Name, PlaceIn(page), "the page has no title",
            "put a line `# Title` right after the front matter"));

    private static TextSpan PlaceIn(Page page) =>
        page.Title?.Heading.Span ?? (page.Sections.IsEmpty ? default : page.Sections[0].Heading.Span);
}
