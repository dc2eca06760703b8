using System.Text;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Server.Content;

/// <summary>Reads a folder again and again; only files of another length or time are read anew.</summary>
internal sealed class PageShelf
{
    private Dictionary<string, (DateTime Written, long Length, ContentFile File)> known = new(StringComparer.Ordinal);

    /// <summary>All <c>.md</c> and <c>.svg</c> files below a folder.</summary>
    /// <exception cref="DirectoryNotFoundException">There is no such folder.</exception>
    public ContentFolder Read(string folder)
    {
        string root = Path.GetFullPath(folder);
        known = new DirectoryInfo(root).EnumerateFiles("*", SearchOption.AllDirectories)
            .Where(file => file.Extension is ".md" or ".svg")
            .ToDictionary(file => file.FullName, file => Read(root, file), StringComparer.Ordinal);
        return ContentFolder.Of(known.Values.Select(page => page.File));
    }

    private (DateTime Written, long Length, ContentFile File) Read(string root, FileInfo file) =>
        known.TryGetValue(file.FullName, out var old) && old.Written == file.LastWriteTimeUtc && old.Length == file.Length
            ? old
            : (file.LastWriteTimeUtc, file.Length, new ContentFile(
                Path.GetRelativePath(root, file.FullName).Replace('\\', '/'), File.ReadAllText(file.FullName, Encoding.UTF8)));
}
