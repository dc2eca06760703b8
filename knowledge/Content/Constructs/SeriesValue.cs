using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Constructs;

/// <summary>A value that the series of the case gives, written <c>series RATING</c>.</summary>
internal static class SeriesValue
{
    private const string Mark = "series ";

    /// <summary>The name of the rating, or null when the text is not such a value.</summary>
    public static string? Rating(string text) =>
        text.StartsWith(Mark, StringComparison.Ordinal) ? text[Mark.Length..].Trim() : null;

    /// <summary>The value cells of a rating on the page of a series; none when the series has no such rating.</summary>
    public static IEnumerable<RichText> Cells(Page series, string rating) =>
        (series.Section("Ratings")?.Table?.Rows ?? [])
            .Where(row => row.Cells.Length == 3 && row.Cells[0].Text == rating)
            .Select(row => row.Cells[1]);
}
