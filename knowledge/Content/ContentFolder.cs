using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Content;

/// <summary>All pages and pictures of a content folder, sorted by path (ordinal), whatever order they came
/// in.</summary>
public sealed class ContentFolder
{
    private ContentFolder(ImmutableArray<ContentFile> files)
    {
        Files = files;
        Pages = [.. files.Where(file => !file.IsPicture)];
        Pictures = [.. files.Where(file => file.IsPicture)];
    }

    /// <summary>Pages and pictures, sorted by path.</summary>
    public ImmutableArray<ContentFile> Files { get; }

    /// <summary>The pages, sorted by path.</summary>
    public ImmutableArray<ContentFile> Pages { get; }

    /// <summary>The pictures, sorted by path.</summary>
    public ImmutableArray<ContentFile> Pictures { get; }

    /// <summary>The file at a path, or null.</summary>
    public ContentFile? File(string path) => Place(path) is >= 0 and int place ? Files[place] : null;

    /// <summary>
    /// The folder with one file put in, in place of the one at its path; this one when that says the same.
    /// </summary>
    public ContentFolder With(ContentFile file)
    {
        ContentFile put = Normalized(file);
        int place = Place(put.Path);
        if (place >= 0 && Files[place] == put) return this;
        return place >= 0 ? new ContentFolder(Files.SetItem(place, put)) : new ContentFolder(Files.Insert(~place, put));
    }

    /// <summary>The folder without the file at a path, if there is one.</summary>
    public ContentFolder Without(string path) =>
        Place(path) is >= 0 and int place ? new ContentFolder(Files.RemoveAt(place)) : this;

    // The place of a path, or the complement of the place where it would stand.
    private int Place(string path)
    {
        int low = 0;
        int high = Files.Length - 1;
        while (low <= high)
        {
            int middle = (low + high) / 2;
            int order = string.CompareOrdinal(Files[middle].Path, path);
            if (order == 0) return middle;
            if (order < 0) low = middle + 1;
            else high = middle - 1;
        }

        return ~low;
    }

    /// <summary>Makes a folder of pages and pictures.</summary>
    /// <exception cref="ArgumentException">Two files have the same path.</exception>
    public static ContentFolder Of(IEnumerable<ContentFile> files)
    {
        ContentFile[] sorted = [.. files.Select(Normalized).OrderBy(file => file.Path, StringComparer.Ordinal)];
        for (int i = 1; i < sorted.Length; i++)
        {
            if (sorted[i].Path == sorted[i - 1].Path)
            {
                throw new ArgumentException($"two files have the path {sorted[i].Path}", nameof(files));
            }
        }

        return new ContentFolder([.. sorted]);
    }

    // A file that needs nothing stays the same object, so that it is seen at once that it did not change.
    private static ContentFile Normalized(ContentFile file) =>
        file.Path.Contains('\\') || file.Text.StartsWith('\uFEFF') || file.Text.Contains('\r')
            ? new ContentFile(
                file.Path.Replace('\\', '/'),
                file.Text.TrimStart('\uFEFF').Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n'))
            : file;
}
