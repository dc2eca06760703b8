namespace DxAssistant.Browser.Tests;

/// <summary>A copy of the small folder of pages, to be changed and thrown away.</summary>
internal sealed class PagesOnDisk : IDisposable
{
    private readonly string root = Directory.CreateTempSubdirectory("pages").FullName;

    public PagesOnDisk()
    {
        string from = RepositoryFolder("tests/Knowledge.Tests/Content/Tiny");
        foreach (string file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories))
        {
            string copy = Path.Combine(Folder, Path.GetRelativePath(from, file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }
    }

    public string Folder => Path.Combine(root, "content");

    public string Proposals => Path.Combine(root, "proposals");

    public string PathOf(string page) => Path.Combine(Folder, page);

    public void Change(string page, Func<string, string> change) =>
        File.WriteAllText(PathOf(page), change(File.ReadAllText(PathOf(page))));

    public void Dispose() => Directory.Delete(root, recursive: true);

    /// <summary>Where a folder of the repository lies.</summary>
    public static string RepositoryFolder(string path)
    {
        for (var at = new DirectoryInfo(AppContext.BaseDirectory); at is not null; at = at.Parent)
            if (Directory.Exists(Path.Combine(at.FullName, path))) return Path.Combine(at.FullName, path);
        throw new DirectoryNotFoundException(path);
    }
}
