namespace DxAssistant.Knowledge.Content.Constructs;

/// <summary>A value that the series of the case gives, written <c>series RATING</c>.</summary>
internal static class SeriesValue
{
    private const string Mark = "series ";

    /// <summary>The name of the rating, or null when the text is not such a value.</summary>
    public static string? Rating(string text) =>
        text.StartsWith(Mark, StringComparison.Ordinal) ? text[Mark.Length..].Trim() : null;
}
