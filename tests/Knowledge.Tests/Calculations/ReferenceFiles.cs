namespace DxAssistant.Knowledge.Tests.Calculations;

/// <summary>Finds the committed reference tables, wherever the tests run from.</summary>
internal static class ReferenceFiles
{
    public static string Read(string name)
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
            if (File.Exists(Path.Combine(folder.FullName, "DxAssistant.sln")))
                return File.ReadAllText(Path.Combine(folder.FullName, "tests", "Reference", name));
        throw new FileNotFoundException(name);
    }
}
