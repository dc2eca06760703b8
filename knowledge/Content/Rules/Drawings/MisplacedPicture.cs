using DxAssistant.Knowledge.Content.Shapes;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Drawings;

/// <summary>A picture where nothing shows it: under another heading than How, or in the middle of a text.</summary>
/// <example>Bad: <c>1. Pull the plug. ![The plug](../pictures/room-sensor.svg)</c>. Good: <c>the picture in a paragraph
/// of its own below the steps</c>.</example>
internal sealed class MisplacedPicture : IContentRule
{
    public string Name => "misplaced-picture";

    public string Meaning =>
        "A picture where nothing shows it: under another heading than How, or in the middle of a text.";

    public bool NeedsFrame => true;

    public RuleExample Bad { get; } = new("checks/room-sensor.md", """
        ## How
        1. Pull the plug.
        ⟦![The plug](../pictures/room-sensor.svg)⟧
        """);

    public RuleExample Good { get; } = new("checks/room-sensor.md", """
        ## How
        1. Pull the plug.

        ![The plug](../pictures/room-sensor.svg)
        """);

    public IEnumerable<Diagnostic> Check(Pages pages) =>
        from page in pages.All
        where page.Kind is not null
        let shown = Shown(page)
        from picture in page.Pictures
        where !shown.Contains(picture.Span)
        select page.Error(Name, picture.Span, "nothing shows a picture here",
            "put it under `## How` of a check, in a paragraph of its own with an empty line above it");

    // A heading that the kind does not have is UnknownHeading's, with all that stands below it.
    private static HashSet<TextSpan> Shown(Page page) =>
    [
        .. page.WrittenSections
            .Where(section => PageShapes.Of(page.Kind!.Value).Section(section.Name) is not { TakesPictures: false })
            .SelectMany(section => section.Pictures.Select(picture => picture.Span)),
    ];
}
