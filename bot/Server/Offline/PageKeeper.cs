using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using DxAssistant.Server.Chat;

namespace DxAssistant.Server.Offline;

/// <summary>The service worker, with the list of the pages' files and their version before its text: the browser takes
/// it for a new one whenever a file changed.</summary>
internal static class PageKeeper
{
    private static readonly string Folder = Path.Combine(AppContext.BaseDirectory, "wwwroot");
    private static readonly string Worker = Path.Combine("js", "offline", "service-worker.js");

    private sealed record Shell(string Version, ImmutableArray<string> Files);

    public static void Map(IEndpointRouteBuilder routes) =>
        routes.MapGet("/sw.js", () => Results.Text(Text(Folder), "text/javascript", Encoding.UTF8));

    /// <param name="folder">
    /// The folder of the pages, read anew each time: it is small, and asked for once a visit.
    /// </param>
    internal static string Text(string folder)
    {
        ImmutableArray<string> files = [.. Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories)
            .Select(file => Path.GetRelativePath(folder, file)).Where(file => file != Worker)
            .Select(file => file.Replace('\\', '/')).Order(StringComparer.Ordinal)];
        var shell = new Shell(VersionOf(folder, files), [.. files.Select(file => "/" + file)]);
        return $"const shell = {JsonSerializer.Serialize(shell, ChatJson.Options)};\n{File.ReadAllText(Path.Combine(folder, Worker))}";
    }

    private static string VersionOf(string folder, IEnumerable<string> files)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (string file in files)
        {
            hash.AppendData(Encoding.UTF8.GetBytes(file + "\n"));
            hash.AppendData(File.ReadAllBytes(Path.Combine(folder, file)));
        }

        return Convert.ToHexStringLower(hash.GetHashAndReset())[..16];
    }
}
