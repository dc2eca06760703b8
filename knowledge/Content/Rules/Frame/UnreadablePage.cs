using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Frame;

/// <summary>A page too long or too deeply nested to be parsed.</summary>
/// <example>Bad: <c>a page of 200,000 characters</c>. Good: <c>Is the plug home?</c>.</example>
internal sealed class UnreadablePage : IContentRule
{
    public string Name => "unreadable-page";

    public string Meaning => "A page too long or too deeply nested to be parsed.";

    public RuleExample Bad { get; } = new("checks/fan-plug.md", "⟦⟧---\n" + new string('x', PageParser.LongestPage));

    public RuleExample Good { get; } = new("checks/fan-plug.md", """
        ## Ask
        Is the plug home?
        """);

    public IEnumerable<Diagnostic> Check(Pages pages) => pages.All
        .Where(page => page.Unparsed is not null)
        .Select(page => page.Error(Name, default, page.Unparsed!, "split the page"));
}
