using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Content.Syntax;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Content.Building;

/// <summary>Makes the record of an access state.</summary>
internal static class AccessBuilder
{
    public static AccessPage Build(PageReader page, Shelf shelf) => new(
        new AccessId(page.Id),
        page.Title,
        page.Summary,
        shelf.Roles[page.List("who")[0]],
        page.Rows("Steps", (row, section) => ReadStep(page, row, section)),
        page.Cautions);

    private static AccessStep ReadStep(PageReader page, TableRow row, Section section)
    {
        Quantity? limit = SafeWhen.Read(row.Cells[2].Text);
        return new AccessStep(page.Passage(row.Cells[0], section), limit is null ? null : new SafeLimit(
            page.Passage(row.Cells[1], section), limit.Unit, limit.Si, page.Passage(row.Cells[2], section)))
        {
            DoneIn =
            [
                .. row.Cell(3) is { } done
                    ? done.Links.Select(link => page.Target(link, PageKind.Access)).OfType<Page>()
                    .Select(state => new AccessId(state.Id)) : [],
            ],
            OnlyAt = Enum.TryParse(row.Cell(4)?.Text, ignoreCase: true, out DangerKind danger) ? danger : null,
        };
    }
}
