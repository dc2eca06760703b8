using System.Text.RegularExpressions;
using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Wording;

/// <summary>A check that asks two things at once, so that nobody knows to which of them the answer belongs.</summary>
/// <example>Bad: <c>Is the plug home and are the pins bright?</c>. Good: <c>Is the plug home?</c>, and a check of its
/// own for the pins.</example>
internal sealed partial class DoubleQuestion : IContentRule
{
    public string Name => "double-question";

    public string Meaning =>
        "A check that asks two things at once, so that nobody knows to which of them the answer belongs.";

    public RuleExample Bad { get; } = new("checks/fan-plug.md", """
        ## Ask
        ⟦Is the fan motor plug fully home, and are the pins bright?⟧
        """);

    public RuleExample Good { get; } = new("checks/fan-plug.md", """
        ## Ask
        Is the fan motor plug fully home?
        """);

    public IEnumerable<Diagnostic> Check(Pages pages) =>
        from page in pages.OfKind(PageKind.Check)
        from spoken in SpokenText.On(page)
        where spoken.IsQuestion && Second().IsMatch(spoken.Text.Text)
        select new Diagnostic(Name, Severity.Warning, page.Source.At(spoken.Text.Span), "this asks two questions",
            "make two checks, or ask for the one thing that tells the faults apart");

    // A second verb of asking with its subject behind "and" or "or".
    [GeneratedRegex(@"\b(and|or) (is|are|was|were|does|do|did|has|have|can|will) (it|they|you|there|this|that|these|those|the|its|their|all|both|any|no)\b",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex Second();
}
