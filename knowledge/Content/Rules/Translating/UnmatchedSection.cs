using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Languages;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Translating;

/// <summary>
/// A section in another language that the page itself lacks or never says there, or with other numbers of items.
/// </summary>
/// <example>Bad: <c>two steps for one</c>. Good: <c>one step for one</c>.</example>
internal sealed class UnmatchedSection : IContentRule
{
    public string Name => "unmatched-section";

    public string Meaning =>
        "A section in another language that the page itself lacks or never says there, or with other numbers of items.";

    public bool LooksAtAll => true;

    public RuleExample Bad { get; } = new("repairs/seat-plug.es.md", """
        ---
        kind: repair
        id: seat-plug
        says: 77bcf0c8
        ---
        # Asiente el conector

        ## ⟦Steps⟧
        1. Empuje el conector.
        2. Cierre la tapa.
        3. Mire otra vez.
        """);

    public RuleExample Good { get; } = new("repairs/seat-plug.es.md", """
        ---
        kind: repair
        id: seat-plug
        says: 77bcf0c8
        ---
        # Asiente el conector

        ## Steps
        1. Empuje el conector.
        """);

    public ImmutableArray<ExamplePair> More { get; } =
    [
        new ExamplePair(
            new RuleExample("repairs/seat-plug.es.md", """
            ---
            kind: repair
            id: seat-plug
            says: 77bcf0c8
            ---
            # Asiente el conector

            ## ⟦Cautions⟧
            - Tensión de red
            """),
            new RuleExample("repairs/seat-plug.es.md", """
            ---
            kind: repair
            id: seat-plug
            says: 77bcf0c8
            ---
            # Asiente el conector

            ## Verify
            ¿Funciona el ventilador?
            """)),
    ];

    public IEnumerable<Diagnostic> Check(Pages pages) =>
        TranslatedPair.All(pages).SelectMany(pair => OfOtherLength(pair).Concat(OutOfPlace(pair)));

    private IEnumerable<Diagnostic> OfOtherLength(TranslatedPair pair) =>
        from part in TranslatedParts.Of(pair.Main.Kind!.Value) ?? []
        where part.Counted
        let main = pair.Main.Section(part.Heading)
        let said = pair.Said.Section(part.Heading)
        where main is not null && said is not null && Count(main) != Count(said)
        select pair.Said.Error(Name, said.Heading.Span,
            $"`## {part.Heading}` has {Count(said)} items or rows, `{pair.Main.Path}` has {Count(main)}",
            "say each of them in its place, or leave the section out until it can be said");

    private IEnumerable<Diagnostic> OutOfPlace(TranslatedPair pair)
    {
        if (TranslatedParts.IsFree(pair.Main.Kind!.Value)) return [];
        ImmutableArray<TranslatedPart> parts = TranslatedParts.Of(pair.Main.Kind!.Value) ?? [];
        return from section in pair.Said.Sections
            where pair.Main.Section(section.Name) is null || parts.All(part => part.Heading != section.Name)
            select pair.Said.Error(Name, section.Heading.Span,
                $"`## {section.Name}` is not said in other languages, or `{pair.Main.Path}` has no such section",
                "headings stay as they are; this page can have: "
                    + string.Join(", ", parts.Select(part => part.Heading)));
    }

    private static int Count(Section section) => section.Table?.Rows.Length ?? section.Items.Length;
}
