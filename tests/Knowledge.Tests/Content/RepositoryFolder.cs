using DxAssistant.Knowledge.Content;

namespace DxAssistant.Knowledge.Tests.Content;

/// <summary>Reads folders of pages that lie in the repository.</summary>
internal static class RepositoryFolder
{
    /// <summary>All pages and pictures below a folder, for example <c>content</c>.</summary>
    public static ContentFolder Read(string folder) => ContentFolder.Of(Files(folder));

    public static IEnumerable<ContentFile> Files(string folder)
    {
        string root = Path.Combine(Root(), folder);
        return Directory.EnumerateFiles(root, "*", SearchOption.AllDirectories)
            .Where(file => Path.GetExtension(file) is ".md" or ".svg")
            .Select(file => new ContentFile(Path.GetRelativePath(root, file), File.ReadAllText(file)));
    }

    public static string Root()
    {
        string? here = AppContext.BaseDirectory;
        while (here is not null && !File.Exists(Path.Combine(here, "DxAssistant.sln")))
        {
            here = Path.GetDirectoryName(here);
        }

        return here ?? throw new DirectoryNotFoundException("DxAssistant.sln is in no folder above the tests");
    }
}
