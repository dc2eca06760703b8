using DxAssistant.Knowledge.Content.Shapes;

namespace DxAssistant.Knowledge.Content.Rules.Frame;

/// <summary>A fault, symptom or series without a sentence under its title.</summary>
/// <example>Bad: <c># Fan plug loose</c>. Good: <c>The plug of the indoor fan is not home.</c>.</example>
internal sealed class MissingSummary : IContentRule
{
    public string Name => "missing-summary";

    public string Meaning => "A fault, symptom or series without a sentence under its title.";

    public bool NeedsFrame => true;

    public RuleExample Bad { get; } = new("faults/fan-plug-loose.md", """
        # ⟦Fan plug loose⟧
        """);

    public RuleExample Good { get; } = new("faults/fan-plug-loose.md", """
        # Fan plug loose
        The plug of the indoor fan is not home.
        """);

    public IEnumerable<Diagnostic> Check(Pages pages) => pages.All
        .Where(page => page is { Kind: { } kind, Title: not null, Summary: null } && PageShapes.Of(kind).NeedsSummary)
        .Select(page => page.Error(Name, page.Title!.Heading.Span, "the page has no summary",
            "say in one or two sentences under the title what it is"));
}
