using System.Diagnostics;
using System.Text;
using DxAssistant.Knowledge.Content;
using DxAssistant.Server.Workbench.Preview;
using Microsoft.AspNetCore.Builder;

namespace DxAssistant.Benchmarks.Live;

/// <summary>The preview as <c>content preview</c> runs it, and a client that follows it.</summary>
internal sealed class LivePreview : IDisposable
{
    private readonly FollowedPages followed;
    private readonly WebApplication app;
    private readonly HttpClient browser;
    private readonly StreamReader changes;

    public LivePreview(string folder)
    {
        var pages = new PreviewPages(folder);
        pages.Reload();
        followed = new FollowedPages(pages, folder, Console.Error);
        app = PreviewServer.Build(pages, 0);
        app.StartAsync().Wait();
        browser = new HttpClient { BaseAddress = new Uri(app.Urls.First()) };
        changes = new StreamReader(browser.GetStreamAsync(new Uri("/api/preview/changes", UriKind.Relative)).Result);
        WaitForChange();
    }

    public Uri Address => browser.BaseAddress!;

    /// <summary>Milliseconds from a save until a client has the new page and the first step of a walk on it.</summary>
    public double Edit(GrowingFolderOnDisk folder, int edit)
    {
        ContentFile page = folder.Edit(edit);
        long saved = Stopwatch.GetTimestamp();
        WaitForChange();
        string shown = browser.GetStringAsync(new Uri($"/api/preview/page?path={page.Path}", UriKind.Relative)).Result;
        string walk = Walk(edit);
        double milliseconds = Stopwatch.GetElapsedTime(saved).TotalMilliseconds;
        if (!shown.Contains(page.Text.Contains("Push it home.", StringComparison.Ordinal)
            ? "Push it home."
            : "Press it home.", StringComparison.Ordinal))
            throw new InvalidOperationException("the page shown is not the page saved");
        return walk.Contains("fan-plug", StringComparison.Ordinal)
            ? milliseconds
            : throw new InvalidOperationException(walk);
    }

    public void Dispose()
    {
        changes.Dispose();
        browser.Dispose();
        followed.Dispose();
        app.DisposeAsync().AsTask().Wait();
    }

    private string Walk(int edit)
    {
        using var asked = new StringContent($"{{\"series\":\"alder-one\",\"symptom\":\"fan-not-turning-{edit}\"}}",
            Encoding.UTF8, "application/json");
        using HttpResponseMessage answer =
            browser.PostAsync(new Uri("/api/preview/walk", UriKind.Relative), asked).Result;
        return answer.Content.ReadAsStringAsync().Result;
    }

    private void WaitForChange()
    {
        while (changes.ReadLine() is { } line)
            if (line.StartsWith("data:", StringComparison.Ordinal)) return;
    }
}
