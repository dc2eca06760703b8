using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Editing;
using DxAssistant.Server.Content;

namespace DxAssistant.Server.Workbench.Editor;

/// <summary>A folder of pages, with what an editor has not saved yet on top.</summary>
internal sealed class EditorFolder(string root)
{
    private readonly Dictionary<string, string> unsaved = new(StringComparer.Ordinal);
    private readonly string root = Path.GetFullPath(root);
    private ContentFolder saved = ContentFolderReader.Read(root);

    public EditorPages Pages { get; } = new();

    /// <summary>Compiles what is there now.</summary>
    public void Compile() => Pages.Take(ContentFolder.Of(saved.Files.Where(file => !unsaved.ContainsKey(file.Path))
        .Concat(unsaved.Select(page => new ContentFile(page.Key, page.Value)))));

    public void Change(string path, string text) => unsaved[path] = text;

    /// <summary>Forgets what was not saved of a page.</summary>
    public void Close(string path) => unsaved.Remove(path);

    /// <summary>Reads the files again.</summary>
    public void Reread() => saved = ContentFolderReader.Read(root);

    /// <summary>The path inside the folder that an address names; null outside it.</summary>
    public string? PathOf(string address)
    {
        if (!Uri.TryCreate(address, UriKind.Absolute, out Uri? uri) || !uri.IsFile) return null;
        string path = Path.GetRelativePath(root, uri.LocalPath).Replace('\\', '/');
        return path.StartsWith("..", StringComparison.Ordinal) || Path.IsPathRooted(path)
            || Path.GetExtension(path) is not (".md" or ".svg") ? null : path;
    }

    public string AddressOf(string path) => new Uri(Path.Combine(root, path)).AbsoluteUri;
}
