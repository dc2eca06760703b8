using DxAssistant.Server.Serving;

namespace DxAssistant.Browser.Tests;

/// <summary>The shipped pages with some words changed.</summary>
internal sealed class ChangedPages : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("changed").FullName;
    private readonly LiveContent content;

    public ChangedPages(string page, string words, string instead)
    {
        string from = ContentPlace.Find()!;
        foreach (string file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories))
        {
            string copy = Path.Combine(folder, Path.GetRelativePath(from, file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }

        string changed = Path.Combine(folder, page);
        File.WriteAllText(changed, File.ReadAllText(changed).Replace(words, instead, StringComparison.Ordinal));
        using var notes = new StringWriter();
        content = LiveContent.Open(folder, notes) ?? throw new InvalidOperationException(notes.ToString());
    }

    public InUse Pages => content.Current;

    public void Dispose()
    {
        content.Dispose();
        Directory.Delete(folder, recursive: true);
    }
}
