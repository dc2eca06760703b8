using DxAssistant.Knowledge.Content.Languages;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules;

/// <summary>Steps or rows in another language that are not as many as on the page itself.</summary>
/// <example>Bad: <c>two steps for one</c>. Good: <c>one step for one</c>.</example>
internal sealed class UnevenTranslation : IContentRule
{
    public string Name => "uneven-translation";

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

    public IEnumerable<Diagnostic> Check(Pages pages) =>
        from pair in TranslatedPair.All(pages)
        from part in TranslatedParts.Of(pair.Main.Kind!.Value) ?? []
        where part.Counted
        let main = pair.Main.Section(part.Heading)
        let said = pair.Said.Section(part.Heading)
        where main is not null && said is not null && Count(main) != Count(said)
        select pair.Said.Error(Name, said.Heading.Span,
            $"`## {part.Heading}` has {Count(said)} items or rows, `{pair.Main.Path}` has {Count(main)}",
            "say each of them in its place, or leave the section out until it can be said");

    private static int Count(Section section) => section.Table?.Rows.Length ?? section.Items.Length;
}
