using DxAssistant.Knowledge.Content.Shapes;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Editing;

/// <summary>What stands at a place of a page.</summary>
/// <param name="Link">The link there, or null.</param>
/// <param name="Field">The field of the front matter there, or null.</param>
/// <param name="Value">The value of that field there, or null.</param>
/// <param name="Section">The section there, or null.</param>
/// <param name="Row">The table row there, or null.</param>
/// <param name="Cell">The cell there, from 0; −1 outside a table.</param>
internal sealed record Spot(
    Page Page, int Offset, PageLink? Link, FrontMatterField? Field, FrontMatterValue? Value, Section? Section,
    TableRow? Row, int Cell)
{
    public PageShape? Shape => Page.Kind is { } kind ? PageShapes.Of(kind) : null;

    public RichText? CellText => Row?.Cell(Cell);

    /// <summary>The head above the cell, or null.</summary>
    public string? Head => Section?.Table?.Head.Cell(Cell)?.Text;

    public static Spot At(Page page, int offset)
    {
        FrontMatterField? field = page.Front?.Fields.FirstOrDefault(each =>
            each.NameSpan.Start <= offset && offset <= Math.Max(each.Span.End, each.NameSpan.End + 1));
        Section? section = page.WrittenSections.LastOrDefault(each => each.Heading.Span.Start <= offset);
        TableRow? row = section?.Tables.SelectMany(table => table.Rows)
            .FirstOrDefault(each => Holds(each.Span, offset));
        return new Spot(page, offset,
            page.Links.Concat(page.Pictures).FirstOrDefault(link => Holds(link.Span, offset)),
            field, field?.Values.FirstOrDefault(value => Holds(value.Span, offset)), section, row,
            CellAt(page, row, offset));
    }

    private static bool Holds(TextSpan span, int offset) => span.Start <= offset && offset <= span.End;

    // Bars before the place, but for one that opens the row.
    private static int CellAt(Page page, TableRow? row, int offset)
    {
        if (row is null) return -1;
        string before = page.Source.Text[row.Span.Start..Math.Max(row.Span.Start, Math.Min(offset, row.Span.End))];
        return before.Count(c => c == '|') - (before.StartsWith('|') ? 1 : 0);
    }
}
