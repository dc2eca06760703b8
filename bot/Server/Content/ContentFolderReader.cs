using System.Text;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Server.Content;

/// <summary>Reads a content folder from disk.</summary>
internal static class ContentFolderReader
{
    /// <summary>
    /// All <c>.md</c> and <c>.svg</c> files below a folder, also with their ends in capitals, which the compiler
    /// reports; bytes that are no UTF-8 become U+FFFD, which the compiler reports.
    /// </summary>
    /// <exception cref="DirectoryNotFoundException">There is no such folder.</exception>
    public static ContentFolder Read(string folder)
    {
        string root = Path.GetFullPath(folder);
        return ContentFolder.Of(Directory.EnumerateFiles(root, "*", SearchOption.AllDirectories)
            .Where(file => Path.GetExtension(file).ToLowerInvariant() is ".md" or ".svg")
            .Select(file => new ContentFile(Path.GetRelativePath(root, file).Replace('\\', '/'),
                Text(File.ReadAllBytes(file)))));
    }

    /// <summary>The text of a page; whatever a mark at its beginning says, pages are UTF-8.</summary>
    public static string Text(ReadOnlySpan<byte> bytes) => Encoding.UTF8.GetString(bytes);
}
