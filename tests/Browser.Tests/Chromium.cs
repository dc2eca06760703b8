using Microsoft.Playwright;

namespace DxAssistant.Browser.Tests;

/// <summary>The browser of this machine.</summary>
internal static class Chromium
{
    private static readonly string[] Names = ["chromium", "chromium-browser", "google-chrome"];

    /// <summary>Where it is; null when there is none.</summary>
    public static string? Path { get; } = (Environment.GetEnvironmentVariable("PATH") ?? "")
        .Split(System.IO.Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries)
        .SelectMany(folder => Names.Select(name => System.IO.Path.Combine(folder, name)))
        .FirstOrDefault(File.Exists);

    /// <summary>In CI nothing may be skipped.</summary>
    public static bool Required => Environment.GetEnvironmentVariable("CI") == "true";

    // One for all tests: each visit has a context of its own, which shares nothing with another. It ends with the program.
    private static readonly Lazy<Task<(IPlaywright, IBrowser)>> Shared = new(() => StartAsync());

    // As somebody has set it who reads text at twice the size.
    private static readonly Lazy<Task<(IPlaywright, IBrowser)>> Large = new(() => StartAsync("--blink-settings=defaultFontSize=32"));

    /// <summary>The running browser.</summary>
    /// <param name="isLarge">One whose reader has text at twice the size.</param>
    public static Task<(IPlaywright Playwright, IBrowser Browser)> RunningAsync(bool isLarge = false) => (isLarge ? Large : Shared).Value;

    private static async Task<(IPlaywright, IBrowser)> StartAsync(params string[] more)
    {
        var playwright = await Playwright.CreateAsync();
        return (playwright, await playwright.Chromium.LaunchAsync(new()
        {
            ExecutablePath = Path ?? throw new InvalidOperationException("there is no Chromium on this machine: install the package chromium"),
            Headless = true,
            Args = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
                "--disable-component-update", "--disable-sync", "--disable-dev-shm-usage", .. more],
        }));
    }
}
