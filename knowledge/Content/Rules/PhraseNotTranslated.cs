using DxAssistant.Knowledge.Content.Languages;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules;

/// <summary>A phrase that a language with its own phrase file lacks, or one that the phrase file itself lacks.</summary>
/// <example>Bad: <c>phrases.es.md without goodbye</c>. Good: <c>with goodbye</c>.</example>
internal sealed class PhraseNotTranslated : IContentRule
{
    public string Name => "phrase-not-translated";

    public RuleExample Bad { get; } = new("phrases.es.md", """
        ---
        kind: phrases
        id: ⟦phrases⟧
        ---
        # Frases

        ## greeting
        Hola {name}, diga qué pasa.
        """);

    public RuleExample Good { get; } = new("phrases.es.md", """
        ---
        kind: phrases
        id: phrases
        ---
        # Frases

        ## greeting
        Hola {name}, diga qué pasa.

        ## goodbye
        Adiós.
        """);

    public IEnumerable<Diagnostic> Check(Pages pages)
    {
        foreach (TranslatedPair pair in TranslatedPair.All(pages).Where(pair => pair.Main.Kind == PageKind.Phrases))
        {
            foreach (Section phrase in pair.Main.Sections.Where(phrase => pair.Said.Section(phrase.Name) is not { Paragraphs.IsEmpty: false }))
            {
                yield return new Diagnostic(Name, Severity.Warning, pair.Said.Source.At(pair.Said.IdSpan),
                    $"the phrase `{phrase.Name}` is missing", "until it is said it is spoken in the main language");
            }

            foreach (Section extra in pair.Said.Sections.Where(phrase => pair.Main.Section(phrase.Name) is null))
            {
                yield return pair.Said.Error(Name, extra.Heading.Span, $"`{pair.Main.Path}` has no phrase `{extra.Name}`");
            }
        }

        foreach (Page language in pages.OfKind(PageKind.Language).Where(page => page.Front?.Field("analyzer") is not null
            && pages.Translations.All(said => said.Path != $"phrases.{page.Id}.md")))
        {
            yield return language.Error(Name, language.IdSpan, $"there is no `phrases.{language.Id}.md`");
        }
    }
}
