using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Languages;
using DxAssistant.Knowledge.Content.Shapes;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Editing;

/// <summary>Gives a page another id: its file, its translations, links to it, and fields that name it.</summary>
internal sealed class Renaming(Pages pages)
{
    public EditorRename? Of(Spot spot, string id, out string? problem) =>
        Of(new Definitions(pages).PageNamed(spot), id, out problem);

    public EditorRename? Of(Page? page, string id, out string? problem)
    {
        problem = page?.Kind is not { } kind ? "there is no id of a page here"
            : PageShapes.Of(kind).Folder is null ? "a page at the top of the folder keeps its name"
            : !Constructs.Id.IsId(id) ? $"{id} is not an id: {Constructs.Id.Help}"
            : pages.Ids(kind).Contains(id) ? $"{id} is there already"
            : null;
        return problem is null ? Made(page!, id) : null;
    }

    private EditorRename Made(Page page, string id)
    {
        Page[] said = [page, .. pages.Translations.Where(other => LanguageOfPath.MainOf(other.Path) == page.Path)];
        return new EditorRename(
            [.. said.Select(file => (file.Path, NewPath(file.Path, page.Id, id)))],
            [
                .. said.Where(file => file.Front?.Field("id") is not null)
                    .Select(file => (Place(file, file.Front!.Field("id")!.Span), id)),
                .. pages.All.Concat(pages.Translations)
                    .SelectMany(at => Links(at, page, id).Concat(Fields(at, page, id))),
            ]);
    }

    private IEnumerable<(EditorPlace, string)> Links(Page at, Page page, string id) =>
        from link in at.Links
        let file = link.Target.Split('#')[0]
        where file.Length > 0 && pages.Target(at, link) == page
        let name = link.TargetSpan.Start + file.LastIndexOf('/') + 1
        select (Place(at, TextSpan.Between(name, link.TargetSpan.Start + file.Length)), id + ".md");

    private static IEnumerable<(EditorPlace, string)> Fields(Page at, Page page, string id) =>
        from field in at.Front?.Fields ?? []
        where at.Kind is { } kind && PageShapes.Of(kind).Field(field.Name)?.RefersTo == page.Kind
        from value in field.Values
        where value.Text == page.Id
        select (Place(at, value.Span), id);

    private static string NewPath(string path, string old, string id)
    {
        int name = path.LastIndexOf('/') + 1;
        return path[..name] + id + path[(name + old.Length)..];
    }

    private static EditorPlace Place(Page page, TextSpan span) =>
        new(page.Path, EditorRange.Of(page.Source.Text, span));
}
