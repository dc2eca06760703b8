using System.Diagnostics;
using Microsoft.Playwright;

namespace DxAssistant.Benchmarks.Live;

/// <summary>A browser with the preview open.</summary>
internal sealed class LiveBrowser : IDisposable
{
    public const string Chromium = "/usr/bin/chromium";

    private readonly Uri address;
    private readonly IPlaywright playwright = Playwright.CreateAsync().GetAwaiter().GetResult();
    private readonly IBrowser browser;
    private readonly IPage page;

    public LiveBrowser(Uri address)
    {
        this.address = address;
        browser = playwright.Chromium.LaunchAsync(new()
        {
            ExecutablePath = Chromium, Args = ["--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage"],
        })
            .GetAwaiter().GetResult();
        page = browser.NewPageAsync().GetAwaiter().GetResult();
    }

    /// <summary>Milliseconds from a save until the page that is open shows it.</summary>
    public double Edit(GrowingFolderOnDisk folder, int edit)
    {
        page.GotoAsync(new Uri(address, $"/?page=checks/fan-plug-{edit}.md").ToString()).GetAwaiter().GetResult();
        page.WaitForSelectorAsync("body[data-ready] #page h2").GetAwaiter().GetResult();
        page.WaitForSelectorAsync(".walk-keys button").GetAwaiter().GetResult();
        Task seen = page.EvaluateAsync("""
            () => new Promise(seen => {
              const shown = document.getElementById('page'), was = shown.textContent;
              new MutationObserver(() => { if (shown.textContent !== was) requestAnimationFrame(() => seen()); }).observe(shown, { childList: true });
              document.body.dataset.watched = 'yes';
            })
            """);
        page.WaitForSelectorAsync("body[data-watched]").GetAwaiter().GetResult();
        folder.Edit(edit);
        long saved = Stopwatch.GetTimestamp();
        seen.GetAwaiter().GetResult();
        return Stopwatch.GetElapsedTime(saved).TotalMilliseconds;
    }

    public void Dispose()
    {
        browser.DisposeAsync().AsTask().GetAwaiter().GetResult();
        playwright.Dispose();
    }
}
