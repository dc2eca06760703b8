using DxAssistant.Knowledge.Content;

namespace DxAssistant.Server.Content;

/// <summary>
/// Reads a folder again and again; only files of another length or time are read anew, and of a change that was
/// noticed only the paths that were told.
/// </summary>
/// <remarks>Not for use from several threads at once.</remarks>
internal sealed class PageShelf
{
    private Dictionary<string, (DateTime Written, long Length, ContentFile File)> known = new(StringComparer.Ordinal);
    private ContentFolder? folder;

    /// <summary>All <c>.md</c> and <c>.svg</c> files below a folder.</summary>
    /// <param name="place">The folder, the same each time.</param>
    /// <param name="changed">
    /// What came, went or changed below it since the last call, files or folders; null when anything
    /// may have. A file told is read even when length and time are as before: two saves may fall into one tick.
    /// </param>
    /// <returns>The folder of last time when nothing is different.</returns>
    /// <exception cref="DirectoryNotFoundException">There is no such folder.</exception>
    public ContentFolder Read(string place, IReadOnlyCollection<string>? changed = null)
    {
        string root = Path.GetFullPath(place);
        ContentFolder now = folder is null || changed is null ? All(root) : Again(root, changed, folder);
        folder = now;
        return now;
    }

    private ContentFolder All(string root)
    {
        known = PagesBelow(new DirectoryInfo(root))
            .ToDictionary(file => PathOf(root, file), file => Read(root, file), StringComparer.Ordinal);
        return ContentFolder.Of(known.Values.Select(page => page.File));
    }

    private ContentFolder Again(string root, IReadOnlyCollection<string> changed, ContentFolder before)
    {
        if (!Directory.Exists(root)) throw new DirectoryNotFoundException($"there is no folder {root}");
        HashSet<string> gone = [.. changed.SelectMany(Known)];
        foreach (FileInfo file in changed.SelectMany(path => Found(Path.Combine(root, path))))
        {
            string path = PathOf(root, file);
            if (changed.Contains(path)) known.Remove(path);
            known[path] = Read(root, file);
            gone.Remove(path);
            before = before.With(known[path].File);
        }

        foreach (string path in gone)
        {
            known.Remove(path);
            before = before.Without(path);
        }

        return before;
    }

    // The page of this path, or the pages of this folder, that were there before.
    private IEnumerable<string> Known(string path) => known.ContainsKey(Slashed(path))
        ? [Slashed(path)]
        : IsPage(path) ? [] : known.Keys.Where(page => page.StartsWith(Slashed(path) + "/", StringComparison.Ordinal));

    private static IEnumerable<FileInfo> Found(string path) =>
        Directory.Exists(path) ? PagesBelow(new DirectoryInfo(path))
        : IsPage(path) && File.Exists(path) ? [new FileInfo(path)]
        : [];

    private static IEnumerable<FileInfo> PagesBelow(DirectoryInfo folder) =>
        folder.EnumerateFiles("*", SearchOption.AllDirectories).Where(file => IsPage(file.Name));

    private (DateTime Written, long Length, ContentFile File) Read(string root, FileInfo file) =>
        known.TryGetValue(PathOf(root, file), out var old) && old.Written == file.LastWriteTimeUtc
            && old.Length == file.Length
            ? old
            : (file.LastWriteTimeUtc, file.Length,
                new ContentFile(PathOf(root, file), ContentFolderReader.Text(File.ReadAllBytes(file.FullName))));

    private static bool IsPage(string path) => Path.GetExtension(path) is ".md" or ".svg";

    private static string PathOf(string root, FileInfo file) => Slashed(Path.GetRelativePath(root, file.FullName));

    private static string Slashed(string path) => path.Replace('\\', '/');
}
