using DxAssistant.Knowledge.Content.Shapes;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Linking;

/// <summary>
/// Links that are right and lead nowhere because a page does not stand in its place, which WrongPlace reports.
/// </summary>
internal static class Strayed
{
    public static bool Explains(Pages pages, Page page, PageLink link) => IsRightElsewhere(pages, page, link)
        || (link.PathFrom(page.Path) is { } path
            && (IsElsewhere(pages, path) || IsSpeltOddly(pages, page, link, path)));

    // The page that links would stand elsewhere, and from there the link would lead to a page.
    private static bool IsRightElsewhere(Pages pages, Page page, PageLink link) =>
        page.Kind is { } kind && page.Front?.Field("id")?.Text is { } id && PageShapes.Of(kind).PathOf(id) is var proper
        && proper != page.Path && link.PathFrom(proper) is { } path && pages.AtPath(path) is not null;

    // The link leads to where the page should stand; one that is misspelt leads nowhere wherever the page stands.
    private static bool IsElsewhere(Pages pages, string path) => PageShapes.KindIn(path) is { } kind
        && Path.GetFileNameWithoutExtension(path) is var id && PageShapes.Of(kind).PathOf(id) == path
        && pages.WithId(kind, id) is not null;

    private static bool IsSpeltOddly(Pages pages, Page page, PageLink link, string path) =>
        pages.Meant(page, link) is { } meant && OddCharacter.IsIn(meant.Path) && OddCharacter.Plain(meant.Path) == path;
}
