using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Constructs;

/// <summary>The series that a fault or check is for.</summary>
internal static class SeriesOf
{
    /// <summary>The ids that the front matter lists; empty means every series.</summary>
    public static IEnumerable<string> Listed(Page page) =>
        page.Front?.Field("series")?.Values.Select(value => value.Text) ?? [];

    /// <summary>True when the page is for this series.</summary>
    public static bool Includes(Page page, string series) => !Listed(page).Any() || Listed(page).Contains(series);

    /// <summary>True when some series has both.</summary>
    public static bool Meet(Page left, Page right) =>
        !Listed(left).Any() || !Listed(right).Any() || Listed(left).Intersect(Listed(right)).Any();

    /// <summary>The pages of the series that a fault or check is for.</summary>
    public static IEnumerable<Page> Pages(Pages pages, Page page) =>
        pages.EveryOfKind(PageKind.Series).Where(series => Includes(page, series.Id));
}
