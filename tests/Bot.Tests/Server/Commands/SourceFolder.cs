namespace DxAssistant.Bot.Tests.Server.Commands;

/// <summary>Folders of the sources that tests read from.</summary>
internal static class SourceFolder
{
    public static string Find(string path)
    {
        for (var at = new DirectoryInfo(AppContext.BaseDirectory); at is not null; at = at.Parent)
            if (Directory.Exists(Path.Combine(at.FullName, path))) return Path.Combine(at.FullName, path);
        throw new DirectoryNotFoundException($"{path} is not above the tests");
    }
}
