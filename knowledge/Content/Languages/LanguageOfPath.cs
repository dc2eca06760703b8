namespace DxAssistant.Knowledge.Content.Languages;

/// <summary>
/// The language that a file's name tells: <c>checks/fan-plug.es.md</c> says <c>checks/fan-plug.md</c> in Spanish.
/// </summary>
internal static class LanguageOfPath
{
    private const string End = ".md";

    /// <summary>The tag of two letters, or null for a page of its own.</summary>
    public static string? Of(string path)
    {
        if (!path.EndsWith(End, StringComparison.Ordinal)) return null;
        int dot = path.LastIndexOf('.', path.Length - End.Length - 1);
        string tag = path[(dot + 1)..^End.Length];
        return dot > 0 && tag.Length == 2 && tag.All(char.IsAsciiLetterLower) ? tag : null;
    }

    /// <summary>The page that a page of another language says.</summary>
    public static string MainOf(string path) =>
        Of(path) is { } tag ? path[..^(tag.Length + End.Length + 1)] + End : path;
}
