using DxAssistant.Knowledge.Content.Languages;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules;

/// <summary>A phrase in another language with other slots than the phrase itself.</summary>
/// <example>Bad: <c>Hola {nombre}</c> for <c>Hello {name}</c>. Good: <c>Hola {name}</c>.</example>
internal sealed class SlotsDiffer : IContentRule
{
    public string Name => "slots-differ";

    public RuleExample Bad { get; } = new("phrases.es.md", """
        ---
        kind: phrases
        id: phrases
        ---
        # Frases

        ## greeting
        ⟦Hola {nombre}, diga qué pasa.⟧

        ## goodbye
        Adiós.
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

    public IEnumerable<Diagnostic> Check(Pages pages) =>
        from pair in TranslatedPair.All(pages)
        where pair.Main.Kind == PageKind.Phrases
        from said in pair.Said.Sections
        let main = pair.Main.Section(said.Name)
        where main is { Paragraphs.IsEmpty: false } && !said.Paragraphs.IsEmpty
        let slots = Slots(main.Paragraphs[0].Text)
        where !Slots(said.Paragraphs[0].Text).SequenceEqual(slots, StringComparer.Ordinal)
        select pair.Said.Error(Name, said.Paragraphs[0].Span, $"the slots of `{said.Name}` are not those of `{pair.Main.Path}`",
            slots.Length == 0 ? "it has none there" : "they are: " + string.Join(", ", slots.Select(slot => $"{{{slot}}}")));

    private static string[] Slots(string text) =>
    [
        .. text.Split('{').Skip(1).Where(part => part.Contains('}', StringComparison.Ordinal))
            .Select(part => part[..part.IndexOf('}', StringComparison.Ordinal)]).Distinct().Order(StringComparer.Ordinal),
    ];
}
