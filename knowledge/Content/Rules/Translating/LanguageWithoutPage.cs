using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Translating;

/// <summary>A page in a language that has no page in <c>languages/</c>.</summary>
/// <example>Bad: <c>seat-plug.xx.md</c> without <c>languages/xx.md</c>. Good: the page
/// <c>languages/xx.md</c>.</example>
internal sealed class LanguageWithoutPage : IContentRule
{
    public string Name => "language-without-page";

    public string Meaning => "A page in a language that has no page in `languages/`.";

    public bool LooksAtAll => true;

    public RuleExample Bad { get; } = new("repairs/seat-plug.xx.md", """
        ---
        kind: repair
        id: ⟦seat-plug⟧
        says: 77bcf0c8
        ---
        # Xeat xe xlug
        """);

    public RuleExample Good { get; } = new("repairs/seat-plug.es.md", """
        ---
        kind: repair
        id: seat-plug
        says: 77bcf0c8
        ---
        # Asiente el conector
        """);

    public IEnumerable<Diagnostic> Check(Pages pages) =>
        from said in pages.Translations
        where pages.WithId(PageKind.Language, said.Language!) is null
        select said.Error(Name, said.IdSpan, $"the language `{said.Language}` has no page",
            $"write `languages/{said.Language}.md`, or leave this page out");
}
