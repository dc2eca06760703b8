using Microsoft.Playwright;

namespace DxAssistant.Browser.Tests;

/// <summary>
/// The page reads aloud and listens where the browser can, and only when asked to; nothing that was heard is sent
/// unread.
/// </summary>
public sealed class SpeechTests
{
    private const string Heard = "plug was loose";

    // A browser that keeps what it was to say, and hears the same each time (Web Speech API, W3C community group
    // report).
    private const string Voices = $$"""
        globalThis.spoken = [];
        Object.defineProperty(globalThis, 'speechSynthesis', {
          value: { speak: words => { spoken.push(words.text); setTimeout(() => words.onend?.()); }, cancel() {} },
        });
        globalThis.SpeechRecognition = class {
          start() {
            setTimeout(() => {
              this.onresult?.({ results: [[{ transcript: '{{Heard}}' }]] });
              this.onend?.();
            });
          }
          abort() {}
        };
        """;

    [ChromiumFact]
    public async Task ReadingAloudAndListening_AreOffUntilSwitchedOn_AndNothingHeardIsSent()
    {
        await using var site = await Site.StartAsync();
        await using var visit = await Visit.StartAsync("Pixel 7");
        await visit.Context.AddInitScriptAsync(Voices);
        await visit.OpenAsync(site.Address);
        await visit.WriteAsync("compressor does not start");
        Assert.Empty(await visit.Page.EvaluateAsync<string[]>("spoken"));
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Dictate" }).ClickAsync();
        await HeardAsync(visit);
        Assert.Equal("words", await visit.Page.EvaluateAsync<string>("document.activeElement.id"));
        await visit.Page.FillAsync("#words", "");

        string sheet = visit.Page.Url;
        await visit.OpenAsync($"{site.Address}/device");
        await visit.Page.CheckAsync("#aloud");
        await visit.Page.CheckAsync("#listen");
        await visit.OpenAsync(sheet);
        await visit.TapAsync("Done");
        await HeardAsync(visit);

        Assert.Contains("Step 2 of 2. Prove your meter on a known live source.",
            Assert.Single(await visit.Page.EvaluateAsync<string[]>("spoken")), StringComparison.Ordinal);
        Assert.Equal(2, await visit.Page.Locator(".exchange").CountAsync());
        Assert.Empty(visit.Errors);
    }

    private static Task<IJSHandle> HeardAsync(Visit visit) =>
        visit.Page.WaitForFunctionAsync("heard => document.getElementById('words').value === heard", Heard);
}
