using DxAssistant.Knowledge.Content.Languages;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Translating;

/// <summary>
/// A page in another language that says an older wording of the page. A warning: the words may still be right.
/// </summary>
/// <example>Bad: <c>says: 00000000</c>. Good: the mark of the page as it is.</example>
internal sealed class StaleTranslation : IContentRule
{
    public string Name => "stale-translation";

    public string Meaning =>
        "A page in another language that says an older wording of the page. A warning: the words may still be right.";

    public bool LooksAtAll => true;

    public RuleExample Bad { get; } = new("repairs/seat-plug.es.md", """
        ---
        kind: repair
        id: seat-plug
        says: ⟦00000000⟧
        ---
        # Asiente el conector
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
        from pair in TranslatedPair.All(pages)
        where !TranslatedParts.IsFree(pair.Main.Kind!.Value)
        let field = pair.Said.Front?.Field(Stamp.Field)
        let stamp = Stamp.Of(pair.Main)
        where field?.Text != stamp
        select new Diagnostic(Name, Severity.Warning, pair.Said.Source.At(field?.Span ?? pair.Said.IdSpan),
            field is null
                ? $"the page does not say which wording of `{pair.Main.Path}` it is"
                : $"`{pair.Main.Path}` was worded anew since this was written",
            $"read both, then write `{Stamp.Field}: {stamp}`");
}
