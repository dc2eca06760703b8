using DxAssistant.Knowledge.Content.Shapes;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Frame;

/// <summary>An empty table cell where something must stand.</summary>
/// <example>Bad: <c>| [Closed and running](closed-running.md) | |</c>. Good: <c>| [Closed and
/// running](closed-running.md) | 8 |</c>.</example>
internal sealed class EmptyCell : IContentRule
{
    public string Name => "empty-cell";

    public string Meaning => "An empty table cell where something must stand.";

    public bool NeedsFrame => true;

    public RuleExample Bad { get; } = new("access/isolated-open.md", """
        ## Ways here
        | From | Minutes |
        |---|---|
        | [Closed and running](closed-running.md) |⟦ ⟧|
        """);

    public RuleExample Good { get; } = new("access/isolated-open.md", """
        ## Ways here
        | From | Minutes |
        |---|---|
        | [Closed and running](closed-running.md) | 8 |
        """);

    public IEnumerable<Diagnostic> Check(Pages pages)
    {
        foreach (Page page in pages.All.Where(page => page.Kind is not null))
        {
            foreach (Section section in page.Sections)
            {
                SectionShape? shape = PageShapes.Of(page.Kind!.Value).Section(section.Name);
                if (shape is { Heads.IsEmpty: false } && section.Table is { } table && shape.Fits(table))
                {
                    foreach (Diagnostic found in Check(page, shape, table))
                    {
                        yield return found;
                    }
                }
            }
        }
    }

    private IEnumerable<Diagnostic> Check(Page page, SectionShape shape, PipeTable table) =>
        from row in table.Rows
        where row.Cells.Length == table.Head.Cells.Length
        from column in Enumerable.Range(0, row.Cells.Length)
        where row.Cells[column].IsEmpty && !shape.Heads[column].MayBeEmpty
        select page.Error(Name, row.Cells[column].Span, $"the cell `{shape.Heads[column].Head}` is empty");
}
