using DxAssistant.Knowledge.Content.Shapes;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Frame;

/// <summary>A table whose heads are not those of its section.</summary>
/// <example>Bad: <c>| Display | Look | Meaning | Symptom |</c>. Good: <c>| Display | Look | Symptom | Means
/// |</c>.</example>
internal sealed class WrongTableHeads : IContentRule
{
    public string Name => "wrong-table-heads";

    public string Meaning => "A table whose heads are not those of its section.";

    public bool NeedsFrame => true;

    public RuleExample Bad { get; } = new("series/alder-one.md", """
        ## Codes
        ⟦| Display | Look | Meaning | Symptom |⟧
        |---|---|---|---|
        | F1 | steady | Fan speed not seen | [Fan](../symptoms/fan-not-turning.md) |
        """);

    public RuleExample Good { get; } = new("series/alder-one.md", """
        ## Codes
        | Display | Look | Symptom | Means |
        |---|---|---|---|
        | F1 | steady | [Fan](../symptoms/fan-not-turning.md) | Fan speed not seen |
        """);

    public IEnumerable<Diagnostic> Check(Pages pages)
    {
        foreach (Page page in pages.All.Where(page => page.Kind is not null))
        {
            foreach (Section section in page.Sections)
            {
                SectionShape? shape = PageShapes.Of(page.Kind!.Value).Section(section.Name);
                if (shape is { Heads.IsEmpty: false } && section.Table is { } table && !shape.Fits(table))
                {
                    yield return page.Error(Name, table.Head.Span,
                        "the heads of the table are not those of the section",
                        "write `| " + string.Join(" | ", shape.Heads.Select(column => column.Head)) + " |`");
                }
            }
        }
    }
}
