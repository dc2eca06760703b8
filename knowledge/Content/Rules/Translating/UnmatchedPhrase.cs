using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Languages;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Translating;

/// <summary>A phrase that a language with its own phrase file lacks, has too many, or has with other slots.</summary>
/// <example>Bad: <c>Hola {nombre}</c> for <c>Hello {name}</c>. Good: <c>Hola {name}</c>.</example>
internal sealed class UnmatchedPhrase : IContentRule
{
    public string Name => "unmatched-phrase";

    public string Meaning =>
        "A phrase that a language with its own phrase file lacks, has too many, or has with other slots.";

    public bool LooksAtAll => true;

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

    public ImmutableArray<ExamplePair> More { get; } =
    [
        new ExamplePair(
            new RuleExample("phrases.es.md", """
            ---
            kind: phrases
            id: phrases
            ---
            # Frases

            ## greeting
            ⟦Hola {nombre}, diga qué pasa.⟧

            ## goodbye
            Adiós.
            """),
            new RuleExample("phrases.es.md", """
            ---
            kind: phrases
            id: phrases
            ---
            # Frases

            ## greeting
            Hola {name}, diga qué pasa.

            ## goodbye
            Adiós.
            """)),
    ];

    public IEnumerable<Diagnostic> Check(Pages pages) =>
        TranslatedPair.All(pages).Where(pair => pair.Main.Kind == PageKind.Phrases)
            .SelectMany(pair => Lacking(pair).Concat(TooMany(pair)).Concat(OtherSlots(pair)))
            .Concat(WithoutFile(pages));

    private IEnumerable<Diagnostic> Lacking(TranslatedPair pair) =>
        from phrase in pair.Main.Sections
        where pair.Said.Section(phrase.Name) is not { Paragraphs.IsEmpty: false }
        select new Diagnostic(Name, Severity.Warning, pair.Said.Source.At(pair.Said.IdSpan),
            $"the phrase `{phrase.Name}` is missing", "until it is said it is spoken in the main language");

    private IEnumerable<Diagnostic> TooMany(TranslatedPair pair) =>
        from extra in pair.Said.Sections
        where pair.Main.Section(extra.Name) is null
        select pair.Said.Error(Name, extra.Heading.Span, $"`{pair.Main.Path}` has no phrase `{extra.Name}`");

    private IEnumerable<Diagnostic> OtherSlots(TranslatedPair pair) =>
        from said in pair.Said.Sections
        let main = pair.Main.Section(said.Name)
        where main is { Paragraphs.IsEmpty: false } && !said.Paragraphs.IsEmpty
        let slots = Slots(main.Paragraphs[0].Text)
        where !Slots(said.Paragraphs[0].Text).SequenceEqual(slots, StringComparer.Ordinal)
        select pair.Said.Error(Name, said.Paragraphs[0].Span,
            $"the slots of `{said.Name}` are not those of `{pair.Main.Path}`",
            slots.Length == 0
                ? "it has none there"
                : "they are: " + string.Join(", ", slots.Select(slot => $"{{{slot}}}")));

    private IEnumerable<Diagnostic> WithoutFile(Pages pages) =>
        from language in pages.OfKind(PageKind.Language)
        where language.Front?.Field("analyzer") is not null
            && pages.Translations.All(said => said.Path != $"phrases.{language.Id}.md")
        select language.Error(Name, language.IdSpan, $"there is no `phrases.{language.Id}.md`");

    private static string[] Slots(string text) =>
    [
        .. text.Split('{').Skip(1).Where(part => part.Contains('}', StringComparison.Ordinal))
            .Select(part => part[..part.IndexOf('}', StringComparison.Ordinal)]).Distinct()
            .Order(StringComparer.Ordinal),
    ];
}
