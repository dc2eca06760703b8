using System.Diagnostics;

namespace DxAssistant.Browser.Tests;

/// <summary>The programs that look the pages through, installed by <c>npm ci</c> in <c>tests/Pages</c>.</summary>
internal static class PageTools
{
    public static string Folder { get; } = Find("tests/Pages");

    /// <summary>Whether they are installed, and Node to run them.</summary>
    public static bool AreHere { get; } = Directory.Exists(Path.Combine(Folder, "node_modules", "typescript"))
        && (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
            .Any(folder => File.Exists(Path.Combine(folder, "node")));

    /// <summary>Checks the types of a project.</summary>
    /// <returns>How it ended, and all that was said.</returns>
    /// <param name="project">The folder of a tsconfig.json.</param>
    public static Task<(int Exit, string Said)> CheckTypesAsync(string project) =>
        RunAsync(Path.Combine("node_modules", "typescript", "bin", "tsc"), "-p", project);

    /// <summary>Runs a script of the folder with Node.</summary>
    public static async Task<(int Exit, string Said)> RunAsync(string script, params string[] words)
    {
        var start = new ProcessStartInfo("node", [script, .. words])
        {
            WorkingDirectory = Folder, RedirectStandardOutput = true, RedirectStandardError = true,
        };
        using var running = Process.Start(start)!;
        var complained = running.StandardError.ReadToEndAsync();
        string said = await running.StandardOutput.ReadToEndAsync();
        await running.WaitForExitAsync();
        return (running.ExitCode, said + await complained);
    }

    private static string Find(string path)
    {
        for (var at = new DirectoryInfo(AppContext.BaseDirectory); at is not null; at = at.Parent)
            if (Directory.Exists(Path.Combine(at.FullName, path))) return Path.Combine(at.FullName, path);
        throw new DirectoryNotFoundException(path);
    }
}
