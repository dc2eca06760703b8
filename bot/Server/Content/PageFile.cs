using System.Text;

namespace DxAssistant.Server.Content;

/// <summary>Writes pages back without changing what the author did not ask to have changed.</summary>
internal static class PageFile
{
    private const string ByteOrderMark = "\uFEFF";

    /// <summary>Puts other text in a page, keeping its line ends and byte order mark. Whoever reads the file meanwhile
    /// sees the old page or the new one, never half of one.</summary>
    /// <param name="path">A page that is there.</param>
    /// <param name="text">The new text, with line ends <c>\n</c>.</param>
    /// <exception cref="IOException">The page cannot be read or written.</exception>
    public static void Rewrite(string path, string text)
    {
        string old = Encoding.UTF8.GetString(File.ReadAllBytes(path));
        bool isMarked = old.StartsWith(ByteOrderMark, StringComparison.Ordinal);
        if (old.Contains("\r\n", StringComparison.Ordinal)) text = text.Replace("\n", "\r\n", StringComparison.Ordinal);
        string beside = path + ".new";
        File.WriteAllText(beside, text, new UTF8Encoding(isMarked));
        File.Move(beside, path, overwrite: true);
    }
}
