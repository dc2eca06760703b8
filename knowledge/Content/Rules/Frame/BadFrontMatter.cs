using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Frame;

/// <summary>Front matter that is missing, not YAML, or more than a flat list of fields.</summary>
/// <example>Bad: <c>access: {state: isolated-open}</c>. Good: <c>access: [isolated-open]</c>.</example>
internal sealed class BadFrontMatter : IContentRule
{
    public string Name => "bad-front-matter";

    public string Meaning => "Front matter that is missing, not YAML, or more than a flat list of fields.";

    public bool IsAboutFrame => true;

    public RuleExample Bad { get; } = new("checks/fan-plug.md", """
        ---
        kind: check
        id: fan-plug
        access: ⟦{⟧state: isolated-open}
        ---
        """);

    public RuleExample Good { get; } = new("checks/fan-plug.md", """
        ---
        kind: check
        id: fan-plug
        minutes: 3
        access: [isolated-open]
        who: technician
        ---
        """);

    public IEnumerable<Diagnostic> Check(Pages pages)
    {
        foreach (Page page in pages.All.Where(page => page.Unparsed is null && !page.Source.IsNoText))
        {
            if (page.Front is null)
            {
                yield return page.Source.Text.StartsWith("---\n", StringComparison.Ordinal)
                    ? page.Error(Name, new TextSpan(0, 3), "the front matter has no end",
                        "put a line `---` below its last field")
                    : page.Error(Name, default, "the page has no front matter",
                    "start the page with a line `---`, then `kind: …` and `id: …`, then a line `---`");
            }
            else if (page.Front.Problem is { } problem)
            {
                yield return page.Error(Name, page.Front.ProblemSpan, problem, page.Front.Help);
            }
        }
    }
}
