namespace DxAssistant.Knowledge.Content.Rules.Frame;

/// <summary>HTML, which no page may hold.</summary>
/// <example>Bad: <c>Is the plug &lt;b&gt;home?</c>. Good: <c>Is the plug **home**?</c>.</example>
internal sealed class HtmlInPage : IContentRule
{
    public string Name => "html-in-page";

    public string Meaning => "HTML, which no page may hold.";

    public RuleExample Bad { get; } = new("checks/fan-plug.md", """
        ## Ask
        Is the plug ⟦<b>⟧home?
        """);

    public RuleExample Good { get; } = new("checks/fan-plug.md", """
        ## Ask
        Is the plug **home**?
        """);

    // A line with an opening and a closing tag is one fault.
    public IEnumerable<Diagnostic> Check(Pages pages) => pages.All.SelectMany(page => page.Html
        .Select(span => page.Error(Name, span, "HTML stands in the page", "write it in Markdown"))
        .DistinctBy(diagnostic => diagnostic.At.Line));
}
