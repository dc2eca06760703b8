using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Content;

/// <summary>All pages of a content folder, sorted by path (ordinal), whatever order they came in.</summary>
public sealed class ContentFolder
{
    private ContentFolder(ImmutableArray<ContentFile> files) => Files = files;

    /// <summary>The pages, sorted by path.</summary>
    public ImmutableArray<ContentFile> Files { get; }

    /// <summary>Makes a folder of pages.</summary>
    /// <exception cref="ArgumentException">Two pages have the same path.</exception>
    public static ContentFolder Of(IEnumerable<ContentFile> files)
    {
        ContentFile[] sorted = [.. files.Select(Normalized).OrderBy(file => file.Path, StringComparer.Ordinal)];
        for (int i = 1; i < sorted.Length; i++)
        {
            if (sorted[i].Path == sorted[i - 1].Path)
            {
                throw new ArgumentException($"two pages have the path {sorted[i].Path}", nameof(files));
            }
        }

        return new ContentFolder([.. sorted]);
    }

    private static ContentFile Normalized(ContentFile file) => new(
        file.Path.Replace('\\', '/'),
        file.Text.TrimStart('\uFEFF').Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n'));
}
