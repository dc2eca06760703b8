using DxAssistant.Knowledge.Content;

namespace DxAssistant.Server.Workbench.Forms;

/// <summary>The title of a page, right or wrong as it is.</summary>
internal static class PageTitle
{
    /// <returns>The path where there is no title.</returns>
    public static string Of(ContentFile page)
    {
        foreach (ReadOnlySpan<char> line in page.Text.AsSpan().EnumerateLines())
            if (line.StartsWith("# ") && line[2..].Trim() is { IsEmpty: false } title) return title.ToString();
        return page.Path;
    }
}
