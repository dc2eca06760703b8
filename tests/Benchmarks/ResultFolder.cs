namespace DxAssistant.Benchmarks;

/// <summary>Where a run leaves its tables and pictures: <c>artifacts/benchmarks</c>, which is not committed.</summary>
internal sealed class ResultFolder
{
    private readonly string _path;

    private ResultFolder(string path) => _path = path;

    public static ResultFolder OfThisRun()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "DxAssistant.sln")))
            folder = folder.Parent;
        var path = Path.Combine(folder?.FullName ?? Environment.CurrentDirectory, "artifacts", "benchmarks");
        Directory.CreateDirectory(path);
        return new ResultFolder(path);
    }

    /// <summary>Writes one result and shows it.</summary>
    public void Write(string name, string text)
    {
        File.WriteAllText(Path.Combine(_path, name), text);
        if (name.EndsWith(".md", StringComparison.Ordinal))
            Console.WriteLine(text);
        Console.WriteLine($"Written: {Path.Combine(_path, name)}");
    }

    /// <summary>Writes one result where the committed ones stand, and shows it.</summary>
    public void Keep(string name, string text)
    {
        Write(name, text);
        string kept = Path.GetFullPath(Path.Combine(_path, "..", "..", "tests", "Benchmarks", "results", name));
        if (!Directory.Exists(Path.GetDirectoryName(kept))) return;
        File.WriteAllText(kept, text);
        Console.WriteLine($"Written: {kept}");
    }

    /// <summary>Keeps a piece of a result for later runs.</summary>
    public void KeepPiece(string name, string text) => File.WriteAllText(Path.Combine(_path, name), text);

    /// <summary>What was kept; null when there is none.</summary>
    public string? Piece(string name) =>
        File.Exists(Path.Combine(_path, name)) ? File.ReadAllText(Path.Combine(_path, name)) : null;

    /// <summary>For files that a library writes by itself.</summary>
    public string Working => Path.Combine(_path, "working");
}
