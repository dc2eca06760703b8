namespace DxAssistant.Bot.Tests.Server.Workbench;

/// <summary>A copy of the small folder of pages, to be changed and thrown away.</summary>
internal sealed class TinyPages : IDisposable
{
    private readonly string root = Path.Combine(Path.GetTempPath(), Path.GetRandomFileName());

    public TinyPages() => Copy(Repository.PathOf("tests", "Knowledge.Tests", "Content", "Tiny"), Folder);

    /// <summary>The folder of the pages.</summary>
    public string Folder => Path.Combine(root, "content");

    public string PathOf(string page) => Path.Combine(Folder, page);

    public string Read(string page) => File.ReadAllText(PathOf(page));

    public void Change(string page, Func<string, string> change) => File.WriteAllText(PathOf(page), change(Read(page)));

    /// <summary>Another copy, unchanged.</summary>
    public string Other()
    {
        string other = Path.Combine(root, "other");
        Copy(Repository.PathOf("tests", "Knowledge.Tests", "Content", "Tiny"), other);
        return other;
    }

    /// <summary>A copy of the pages as they are now.</summary>
    public string Copy(string name)
    {
        string copy = Path.Combine(root, name);
        Copy(Folder, copy);
        return copy;
    }

    public void Dispose() => Directory.Delete(root, recursive: true);

    private static void Copy(string from, string to)
    {
        foreach (string file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories))
        {
            string copy = Path.Combine(to, Path.GetRelativePath(from, file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }
    }
}
