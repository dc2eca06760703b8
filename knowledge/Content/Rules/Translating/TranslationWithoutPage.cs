using DxAssistant.Knowledge.Content.Languages;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Translating;

/// <summary>A page in another language beside no page of that kind and id, or without a title.</summary>
/// <example>Bad: <c>seat-plgu.es.md</c> beside <c>seat-plug.md</c>. Good: <c>seat-plug.es.md</c>.</example>
internal sealed class TranslationWithoutPage : IContentRule
{
    public string Name => "translation-without-page";

    public string Meaning => "A page in another language beside no page of that kind and id, or without a title.";

    public bool LooksAtAll => true;

    public RuleExample Bad { get; } = new("repairs/seat-plgu.es.md", """
        ---
        kind: repair
        id: ⟦seat-plgu⟧
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

    public IEnumerable<Diagnostic> Check(Pages pages)
    {
        foreach (Page said in pages.Translations)
        {
            string path = LanguageOfPath.MainOf(said.Path);
            if (pages.AtPath(path) is not { } main)
            {
                yield return said.Error(Name, said.IdSpan, $"there is no page `{path}` to be said in another language",
                    NearestWord.Find(path, pages.All.Select(page => page.Path)) is { } near
                        ? $"did you mean `{near}`?"
                        : null);
            }
            else if (said.Title is null)
            {
                yield return said.Error(Name, said.IdSpan, "the page has no title");
            }
            else if (said.Front?.Field("id")?.Text != main.Id || said.Kind != main.Kind)
            {
                yield return said.Error(Name, said.IdSpan, $"kind and id are not those of `{path}`");
            }
        }
    }
}
