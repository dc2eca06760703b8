namespace DxAssistant.Knowledge.Tests.Pictures;

/// <summary>Pictures as they were when somebody last looked at them, one mark a line.</summary>
internal static class GoldenPicture
{
    /// <summary>Compares with the kept file; with <c>DX_UPDATE=1</c> writes it anew.</summary>
    public static void Compare(string name, string svg)
    {
        string path = Path.Combine(RepositoryRoot(), "tests/Knowledge.Tests/Pictures/Golden", name + ".svg");
        string lines = svg.Replace("><", ">\n<", StringComparison.Ordinal) + "\n";
        if (Environment.GetEnvironmentVariable("DX_UPDATE") == "1") File.WriteAllText(path, lines);
        Assert.Equal(File.ReadAllText(path).Replace("\r\n", "\n", StringComparison.Ordinal), lines);
    }

    private static string RepositoryRoot()
    {
        string? here = AppContext.BaseDirectory;
        while (here is not null && !File.Exists(Path.Combine(here, "DxAssistant.sln")))
            here = Path.GetDirectoryName(here);
        return here ?? throw new DirectoryNotFoundException("DxAssistant.sln is in no folder above the tests");
    }
}
