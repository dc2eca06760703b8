using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Drawings;

/// <summary>A picture that says nothing to people who cannot see it: no words on the page, or no title in its
/// file.</summary>
/// <example>Bad: <c>![](../pictures/room-sensor.svg)</c>. Good: <c>![The
/// plug](../pictures/room-sensor.svg)</c>.</example>
internal sealed class PictureWithoutWords : IContentRule
{
    public string Name => "picture-without-words";

    public string Meaning =>
        "A picture that says nothing to people who cannot see it: no words on the page, or no title in its file.";

    public bool LooksAtAll => true;

    public RuleExample Bad { get; } = new("checks/room-sensor.md", """
        ## How
        1. Pull the plug.

        ⟦![](../pictures/room-sensor.svg)⟧
        """);

    public RuleExample Good { get; } = new("checks/room-sensor.md", """
        ## How
        1. Pull the plug.

        ![The plug RA on the board](../pictures/room-sensor.svg)
        """);

    public IEnumerable<Diagnostic> Check(Pages pages) => OnPages(pages).Concat(InFiles(pages));

    private IEnumerable<Diagnostic> OnPages(Pages pages) =>
        from page in pages.All
        from picture in page.Pictures
        where picture.Text.Length == 0
        select page.Error(Name, picture.Span, "the picture has no words",
            "write between `[` and `]` what it shows, for people who cannot see it");

    private IEnumerable<Diagnostic> InFiles(Pages pages) =>
        from picture in pages.Pictures
        where picture.Root is not null && picture.Title.Length == 0
        select picture.Error(Name, picture.SpanOf(picture.Root!, "svg"), "the picture has no title",
            "begin with `<title>` and what it shows");
}
