namespace DxAssistant.Server.Serving;

/// <summary>Finds the folder of the pages.</summary>
internal static class ContentPlace
{
    /// <summary>The folder <c>content</c> beside the program or the nearest one above it; else the same from where the
    /// caller stands.</summary>
    /// <returns>Null when there is none.</returns>
    public static string? Find() => FindFrom(AppContext.BaseDirectory) ?? FindFrom(Environment.CurrentDirectory);

    /// <summary>The nearest folder <c>content</c> with an index page, in a folder or above it.</summary>
    public static string? FindFrom(string folder)
    {
        for (var at = new DirectoryInfo(folder); at is not null; at = at.Parent)
        {
            string content = Path.Combine(at.FullName, "content");
            if (File.Exists(Path.Combine(content, "index.md"))) return content;
        }

        return null;
    }
}
