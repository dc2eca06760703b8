using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;

namespace DxAssistant.Server.Offline;

/// <summary>The files of the core for the browser, laid beside the program when it was built.</summary>
internal sealed class EngineFolder
{
    private readonly string folder;

    private EngineFolder(string folder, ImmutableArray<string> files) =>
        (this.folder, Files, Version, Bytes) =
            (folder, files, VersionOf(folder, files), files.Sum(name => SizeOf(folder, name)));

    /// <summary>The names of the files, in ordinal order; compressed twins are not named.</summary>
    public ImmutableArray<string> Files { get; }

    /// <summary>16 hexadecimal digits that stand for all names and contents.</summary>
    public string Version { get; }

    /// <summary>What the files take on the way to the browser, in bytes.</summary>
    public long Bytes { get; }

    /// <returns>Null when the program was built without it.</returns>
    public static EngineFolder? Find() => Open(Path.Combine(AppContext.BaseDirectory, "engine"));

    public static EngineFolder? Open(string folder)
    {
        if (!Directory.Exists(folder)) return null;
        ImmutableArray<string> files = [.. Directory.EnumerateFiles(folder).Select(file => Path.GetFileName(file)!)
            .Where(name => Path.GetExtension(name) is ".js" or ".wasm" or ".json" or ".dat")
            .Order(StringComparer.Ordinal)];
        return files.Contains("dotnet.js") ? new EngineFolder(folder, files) : null;
    }

    /// <summary>Where a file lies, the compressed twin before the plain one.</summary>
    /// <param name="brotli">Whether the caller unpacks Brotli.</param>
    public (string Path, bool IsBrotli)? Locate(string name, bool brotli)
    {
        if (!Files.Contains(name)) return null;
        string plain = Path.Combine(folder, name);
        return brotli && File.Exists(plain + ".br") ? (plain + ".br", true) : (plain, false);
    }

    private static long SizeOf(string folder, string name)
    {
        string plain = Path.Combine(folder, name);
        return new FileInfo(File.Exists(plain + ".br") ? plain + ".br" : plain).Length;
    }

    private static string VersionOf(string folder, ImmutableArray<string> files)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (string name in files)
        {
            hash.AppendData(Encoding.UTF8.GetBytes(name + "\n"));
            hash.AppendData(File.ReadAllBytes(Path.Combine(folder, name)));
        }

        return Convert.ToHexStringLower(hash.GetHashAndReset())[..16];
    }
}
