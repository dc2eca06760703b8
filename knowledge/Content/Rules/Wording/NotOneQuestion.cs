using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Wording;

/// <summary>A check or a verification that does not ask exactly one question.</summary>
/// <example>Bad: <c>Is the plug home? Is it clean?</c>. Good: <c>Is the plug home and clean?</c>.</example>
internal sealed class NotOneQuestion : IContentRule
{
    public string Name => "not-one-question";

    public string Meaning => "A check or a verification that does not ask exactly one question.";

    public RuleExample Bad { get; } = new("checks/fan-plug.md", """
        ## Ask
        ⟦Is the plug home? Is it clean?⟧
        """);

    public RuleExample Good { get; } = new("checks/fan-plug.md", """
        ## Ask
        Is the plug home and clean?
        """);

    public IEnumerable<Diagnostic> Check(Pages pages) =>
        from page in pages.All
        where page.Kind is PageKind.Check or PageKind.Repair
        let asked = page.Section(page.Kind == PageKind.Check ? "Ask" : "Verify")
        where asked is { Paragraphs.IsEmpty: false }
            && page.WrittenSections.Count(section => section.Name == asked.Name) == 1 && !IsQuestion(asked.Paragraphs)
        select page.Error(Name, asked.Paragraphs[0].Span, $"`## {asked.Name}` is not one question",
            "write one paragraph that ends in its only question mark");

    // A closing bracket or quotation mark may follow the question mark.
    private static bool IsQuestion(ImmutableArray<RichText> paragraphs) =>
        paragraphs.Length == 1
        && paragraphs[0].Text.Count(c => c == '?') == 1
        && paragraphs[0].Text.TrimEnd(')', '”', '"').EndsWith('?');
}
