using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Content.Rules.Frame;

/// <summary>HTML, which no page may hold.</summary>
/// <example>Bad: <c>Is the plug &lt;b&gt;home?</c>. Good: <c>Is the plug **home**?</c>.</example>
internal sealed class HtmlInPage : IContentRule
{
    public string Name => "html-in-page";

    public string Meaning => "HTML, which no page may hold.";

    public bool LooksAtAll => true;

    public RuleExample Bad { get; } = new("checks/fan-plug.md", """
        ## Ask
        Is the plug ⟦<b>⟧home?
        """);

    public RuleExample Good { get; } = new("checks/fan-plug.md", """
        ## Ask
        Is the plug **home**?
        """);

    public ImmutableArray<ExamplePair> More { get; } =
    [
        new ExamplePair(
            new RuleExample("repairs/seat-plug.es.md", """
            ---
            kind: repair
            id: seat-plug
            says: 77bcf0c8
            ---
            # Asiente ⟦<b>⟧el conector
            """),
            new RuleExample("repairs/seat-plug.es.md", """
            ---
            kind: repair
            id: seat-plug
            says: 77bcf0c8
            ---
            # Asiente el conector
            """)),
    ];

    // A line with an opening and a closing tag is one fault.
    public IEnumerable<Diagnostic> Check(Pages pages) => pages.Written.SelectMany(page => page.Html
        .Select(span => page.Error(Name, span, "HTML stands in the page", "write it in Markdown"))
        .DistinctBy(diagnostic => diagnostic.At.Line));
}
