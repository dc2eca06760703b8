namespace DxAssistant.Knowledge.Content;

/// <summary>What a page and its parts are called, right or wrong as they are.</summary>
public static class PageTitle
{
    /// <returns>The path where there is no title.</returns>
    public static string Of(ContentFile page)
    {
        foreach (ReadOnlySpan<char> line in page.Text.AsSpan().EnumerateLines())
            if (line.StartsWith("# ") && line[2..].Trim() is { IsEmpty: false } title) return title.ToString();
        return page.Path;
    }

    /// <summary>The heading under which a line stands; null at the head of the page.</summary>
    /// <param name="number">From 1. A heading stands under itself.</param>
    public static string? HeadingAbove(ContentFile page, int number)
    {
        int at = 0;
        for (int line = 1; line <= number && at >= 0; line++)
            at = page.Text.IndexOf('\n', at) + 1 is > 0 and int next ? next : -1;
        return HeadingAbove(page.Text, at < 0 ? page.Text.Length : at - 1);
    }

    /// <summary>The heading under which a place of a text stands; null before the first.</summary>
    /// <param name="place">From 0.</param>
    internal static string? HeadingAbove(string text, int place)
    {
        int mark = text.AsSpan(0, Math.Clamp(place, 0, text.Length)).LastIndexOf("\n## ");
        if (mark < 0) return null;
        ReadOnlySpan<char> rest = text.AsSpan(mark + "\n## ".Length);
        return rest[..(rest.IndexOf('\n') is >= 0 and int end ? end : rest.Length)].Trim().ToString();
    }
}
