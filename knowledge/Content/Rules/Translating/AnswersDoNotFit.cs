using DxAssistant.Knowledge.Content.Languages;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Translating;

/// <summary>
/// A row in another language whose id or sign is not that of the row on the page itself, or a head that is none.
/// </summary>
/// <example>Bad: <c>| at-home | Sí |</c> for the outcome <c>home</c>. Good: <c>| home | Sí |</c>.</example>
internal sealed class AnswersDoNotFit : IContentRule
{
    public string Name => "answers-do-not-fit";

    public string Meaning =>
        "A row in another language whose id or sign is not that of the row on the page itself, or a head that is none.";

    public bool LooksAtAll => true;

    public RuleExample Bad { get; } = new("checks/fan-plug.es.md", """
        ---
        kind: check
        id: fan-plug
        says: 3d8fa9f6
        ---
        # Conector del ventilador

        ## Outcomes
        | Outcome | Answer |
        |---|---|
        | ⟦at-home⟧ | Está asentado |
        | loose | Estaba suelto |
        """);

    public RuleExample Good { get; } = new("checks/fan-plug.es.md", """
        ---
        kind: check
        id: fan-plug
        says: 3d8fa9f6
        ---
        # Conector del ventilador

        ## Outcomes
        | Outcome | Answer |
        |---|---|
        | home | Está asentado |
        | loose | Estaba suelto |
        """);

    public IEnumerable<Diagnostic> Check(Pages pages) =>
        from pair in TranslatedPair.All(pages)
        from part in TranslatedParts.Of(pair.Main.Kind!.Value) ?? []
        let main = pair.Main.Section(part.Heading)?.Table
        let said = pair.Said.Section(part.Heading)?.Table
        where main is not null && said is not null && main.Rows.Length == said.Rows.Length
        from problem in Heads(pair, part, said).Concat(Rows(pair, part, main, said))
        select problem;

    private IEnumerable<Diagnostic> Heads(TranslatedPair pair, TranslatedPart part, PipeTable said) =>
        from head in said.Head.Cells
        where !part.Keys.Contains(head.Text) && !part.Texts.Contains(head.Text)
        select pair.Said.Error(Name, head.Span,
            $"`{head.Text}` is not a head of `## {part.Heading}` in another language",
            "the heads are: " + string.Join(", ", part.Keys.Concat(part.Texts)));

    private IEnumerable<Diagnostic> Rows(TranslatedPair pair, TranslatedPart part, PipeTable main, PipeTable said)
    {
        for (int row = 0; row < main.Rows.Length; row++)
        {
            foreach (string key in part.Keys)
            {
                string id = main.Rows[row].Cell(main.Column(key))?.Text ?? "";
                if (said.Rows[row].Cell(said.Column(key)) is { } cell && cell.Text != id)
                {
                    yield return pair.Said.Error(Name, cell.Span, $"this row says `{id}` on `{pair.Main.Path}`",
                        "ids and signs are the same in every language, and so is the order of the rows");
                }
            }
        }
    }
}
