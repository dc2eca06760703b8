using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Drawings;

/// <summary>A picture whose file does not exist.</summary>
/// <example>Bad: <c>![The plug](../pictures/room-senser.svg)</c>. Good: <c>![The
/// plug](../pictures/room-sensor.svg)</c>.</example>
internal sealed class MissingPicture : IContentRule
{
    public string Name => "missing-picture";

    public string Meaning => "A picture whose file does not exist.";

    public bool LooksAtAll => true;

    public RuleExample Bad { get; } = new("checks/room-sensor.md", """
        ## How
        1. Pull the plug.

        ![The plug](⟦../pictures/room-senser.svg⟧)
        """);

    public RuleExample Good { get; } = new("checks/room-sensor.md", """
        ## How
        1. Pull the plug.

        ![The plug](../pictures/room-sensor.svg)
        """);

    public IEnumerable<Diagnostic> Check(Pages pages) =>
        from page in pages.All
        from picture in page.Pictures
        where pages.Picture(page, picture) is null
        select page.Error(Name, picture.TargetSpan, $"there is no picture `{picture.Target}`",
            Meant(pages, page, picture) is { } meant
                ? $"did you mean `{PageLink.Between(page.Path, meant.Path)}`?"
                : "pictures are `.svg` files of the folder `pictures`");

    /// <summary>The file that a picture without one was probably meant for, or null.</summary>
    internal static PictureFile? Meant(Pages pages, Page page, PageLink picture)
    {
        if (pages.Picture(page, picture) is not null || picture.PathFrom(page.Path) is not { Length: > 0 } path)
        {
            return null;
        }

        string file = "/" + path.Split('/')[^1];
        return pages.Pictures.FirstOrDefault(known => ("/" + known.Path).EndsWith(file, StringComparison.Ordinal))
            ?? (NearestWord.Find(path, pages.Pictures.Select(known => known.Path)) is { } near
                ? pages.Pictures.First(known => known.Path == near)
                : null);
    }
}
