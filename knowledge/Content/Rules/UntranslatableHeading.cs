using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Languages;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules;

/// <summary>A section that a page in another language cannot have, since it holds numbers or links.</summary>
/// <example>Bad: <c>## Cautions</c>. Good: <c>## Steps</c>.</example>
internal sealed class UntranslatableHeading : IContentRule
{
    public string Name => "untranslatable-heading";

    public RuleExample Bad { get; } = new("repairs/seat-plug.es.md", """
        ---
        kind: repair
        id: seat-plug
        says: 77bcf0c8
        ---
        # Asiente el conector

        ## ⟦Cautions⟧
        - Tensión de red
        """);

    public RuleExample Good { get; } = new("repairs/seat-plug.es.md", """
        ---
        kind: repair
        id: seat-plug
        says: 77bcf0c8
        ---
        # Asiente el conector

        ## Verify
        ¿Funciona el ventilador?
        """);

    public IEnumerable<Diagnostic> Check(Pages pages)
    {
        foreach (TranslatedPair pair in TranslatedPair.All(pages).Where(pair => !TranslatedParts.IsFree(pair.Main.Kind!.Value)))
        {
            ImmutableArray<TranslatedPart> parts = TranslatedParts.Of(pair.Main.Kind!.Value) ?? [];
            foreach (Section section in pair.Said.Sections.Where(section =>
                pair.Main.Section(section.Name) is null || parts.All(part => part.Heading != section.Name)))
            {
                yield return pair.Said.Error(Name, section.Heading.Span,
                    $"`## {section.Name}` is not said in other languages, or `{pair.Main.Path}` has no such section",
                    "headings stay as they are; this page can have: " + string.Join(", ", parts.Select(part => part.Heading)));
            }
        }
    }
}
