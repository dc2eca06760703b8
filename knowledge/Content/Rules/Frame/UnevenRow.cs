using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Frame;

/// <summary>A table row with more or fewer cells than the head.</summary>
/// <example>Bad: <c>| [Closed and running](closed-running.md) |</c>. Good: <c>| [Closed and running](closed-running.md)
/// | 8 |</c>.</example>
internal sealed class UnevenRow : IContentRule
{
    public string Name => "uneven-row";

    public string Meaning => "A table row with more or fewer cells than the head.";

    public bool NeedsFrame => true;

    public RuleExample Bad { get; } = new("access/isolated-open.md", """
        ## Ways here
        | From | Minutes |
        |---|---|
        | ⟦[Closed and running](closed-running.md)⟧ |
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
            foreach (PipeTable table in page.Sections.SelectMany(section => section.Tables))
            {
                int heads = table.Head.Cells.Length;
                foreach (TableRow row in table.Rows.Where(row => row.Cells.Length != heads))
                {
                    yield return page.Error(Name, row.Cells.IsEmpty ? row.Span : row.Cells[^1].Span,
                        $"the row has {row.Cells.Length} cells, its table has {heads} heads",
                        "put `|` between cells, an empty cell included; write `\\|` for a bar inside a cell");
                }
            }
        }
    }
}
