using DxAssistant.Benchmarks.Groups;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Tests.Content;
using DxAssistant.Server.Content;

namespace DxAssistant.Benchmarks.Live;

/// <summary>
/// A growing folder written to disk, with the phrases that the conversation needs; goes away when disposed.
/// </summary>
internal sealed class GrowingFolderOnDisk : IDisposable
{
    private readonly ContentFolder pages;

    public GrowingFolderOnDisk(int size)
    {
        Path = Directory.CreateTempSubdirectory("dx-live-").FullName;
        pages = GrowingFolder.Of(size).With(new ContentFile("phrases.md",
            File.ReadAllText(System.IO.Path.Combine(RepositoryFolder.Root(), "content", "phrases.md"))));
        foreach (ContentFile file in pages.Files) Write(file);
    }

    public string Path { get; }

    public int Count => pages.Pages.Length;

    /// <summary>Saves one page with an edit as an editor does.</summary>
    /// <returns>The page as it reads now.</returns>
    public ContentFile Edit(int edit)
    {
        ContentFile file = GrowingFolder.Edited(pages, edit).File($"checks/fan-plug-{edit}.md")!;
        Write(file);
        return file;
    }

    public void CompileWhole()
    {
        if (ContentCompiler.Compile(ContentFolderReader.Read(Path)).Library is null)
            throw new InvalidOperationException("the pages have errors");
    }

    public void Dispose() => Directory.Delete(Path, recursive: true);

    private void Write(ContentFile file)
    {
        string place = System.IO.Path.Combine(Path, file.Path);
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(place)!);
        File.WriteAllText(place, file.Text);
    }
}
