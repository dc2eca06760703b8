using System.Collections.Concurrent;
using Microsoft.Playwright;

namespace DxAssistant.Browser.Tests;

/// <summary>The browser of this machine.</summary>
internal static class Chromium
{
    // Without windows first: the form with them draws its own tabs and menus for each visit, seen by nobody, which
    // takes more of the processor than the pages do.
    private static readonly string[] Names =
        ["chromium-headless-shell", "chromium", "chromium-browser", "google-chrome"];

    // One of a kind for all tests: each visit has a context of its own, which shares nothing with another. They end
    // with the program.
    private static readonly ConcurrentDictionary<BrowserKind, Lazy<Task<(IPlaywright, IBrowser)>>> Running = new();

    /// <summary>The form with windows; null when there is none.</summary>
    public static string? WindowedPath { get; } = Find(Names[1..]);

    /// <summary>Where it is; null when there is none, or only the form that some tests cannot do with.</summary>
    public static string? Path { get; } = WindowedPath is null ? null : Find(Names);

    /// <summary>In CI nothing may be skipped.</summary>
    public static bool Required => Environment.GetEnvironmentVariable("CI") == "true";

    /// <summary>The running browser of a kind.</summary>
    public static Task<(IPlaywright Playwright, IBrowser Browser)> RunningAsync(BrowserKind kind = BrowserKind.Plain) =>
        Running.GetOrAdd(kind, which => new(() => StartAsync(which))).Value;

    private static Task<(IPlaywright, IBrowser)> StartAsync(BrowserKind kind) => kind switch
    {
        BrowserKind.LargeText => StartAsync(Path, "--blink-settings=defaultFontSize=32"),
        BrowserKind.Windowed => StartAsync(WindowedPath),
        _ => StartAsync(Path),
    };

    private static async Task<(IPlaywright, IBrowser)> StartAsync(string? path, params string[] more)
    {
        var playwright = await Playwright.CreateAsync();
        return (playwright, await playwright.Chromium.LaunchAsync(new()
        {
            ExecutablePath = path
                ?? throw new InvalidOperationException(
                    "there is no Chromium on this machine: install the package chromium"),
            Headless = true,
            Args = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
                "--disable-background-networking",
                "--disable-component-update", "--disable-sync", "--disable-dev-shm-usage", .. more],
        }));
    }

    private static string? Find(IEnumerable<string> names) => (Environment.GetEnvironmentVariable("PATH") ?? "")
        .Split(System.IO.Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries)
        .SelectMany(folder => names.Select(name => System.IO.Path.Combine(folder, name)))
        .FirstOrDefault(File.Exists);
}
