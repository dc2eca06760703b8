using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Drawings;

/// <summary>A picture that no page shows.</summary>
/// <example>Bad: <c>a file in pictures/ that no page shows</c>. Good: <c>the picture shown on a page</c>.</example>
internal sealed class UnusedPicture : IContentRule
{
    public string Name => "unused-picture";

    public string Meaning => "A picture that no page shows.";

    public bool LooksAtAll => true;

    public RuleExample Bad { get; } = new("pictures/fan-seen.svg", """
        <⟦svg⟧ xmlns="http://www.w3.org/2000/svg" viewBox="0 0 320 200">
          <title>The fan</title>
          <circle class="ink" cx="40" cy="40" r="4"/>
        </svg>
        """);

    public RuleExample Good { get; } = new("checks/room-sensor.md", """
        ## How
        1. Pull the plug.

        ![The plug](../pictures/room-sensor.svg)
        """);

    public IEnumerable<Diagnostic> Check(Pages pages)
    {
        // What an unparsed page shows is not known.
        if (pages.All.Any(page => page.Unparsed is not null))
        {
            return [];
        }

        HashSet<PictureFile> used =
        [
            .. pages.All.SelectMany(page => page.Pictures.Select(picture =>
                pages.Picture(page, picture) ?? MissingPicture.Meant(pages, page, picture))).OfType<PictureFile>(),
        ];
        return pages.Pictures.Where(picture => picture.Root is not null && !used.Contains(picture)).Select(picture =>
            picture.Error(Name, picture.SpanOf(picture.Root!, "svg"), "no page shows this picture",
                "show it under `## How` of a check, or take it out of the folder"));
    }
}
