namespace DxAssistant.Browser.Tests;

/// <summary>
/// The narrowest phone, whose reader has set text at twice the size: nothing sticks out, and words are read as words.
/// Source of the criteria: WCAG 2.2, 1.4.4 Resize text and 1.4.10 Reflow, here both at once.
/// </summary>
public sealed class LargeTextTests
{
    // Narrower than that many letters' height, a longer text comes apart into letters; twice that is what a word takes.
    private const string ComeApart = """
        [...document.querySelectorAll('main *:not(svg *, thead *, .unseen, option)')]
          .filter(e => e.checkVisibility() && [...e.childNodes].some(node => node.nodeType === Node.TEXT_NODE && node.textContent.trim().length > 11))
          .filter(e => e.getBoundingClientRect().width < 3.5 * parseFloat(getComputedStyle(e).fontSize))
          .map(e => `${e.tagName} ${e.className}: ${e.textContent}`)
        """;

    [ChromiumFact]
    public async Task Pages_InTwiceTheTextOnTheNarrowestPhone_AreReadAsWords()
    {
        await using var site = await Site.StartAsync();
        await using var visit = await Visit.StartAsync(width: 320, height: 568, kind: BrowserKind.LargeText);
        await visit.OpenAsync(site.Address);
        await visit.WriteAsync("compressor does not start");
        await visit.TapAsync("Done");
        await visit.TapAsync("Done");
        string sheet = new Uri(visit.Page.Url).AbsolutePath;
        await visit.Page.EvaluateAsync("""
            path => fetch(`/api${path.replace('/case/', '/cases/')}/job`, { method: 'POST', headers: { 'Content-Type': 'application/json' },
              body: JSON.stringify({ turnId: 'unit', unit: { serial: 'ZZ 24071532 1190', site: 'Under the roof of the barn' } }) })
            """, sheet);

        foreach (string path in new[] { sheet, $"{sheet}/job", $"{sheet}/sheet", $"{sheet}/call", "/work", "/device" })
        {
            await visit.OpenAsync(site.Address + path);
            await visit.PictureAsync($"large-{path.Split('/')[^1]}", whole: true);
            Assert.Empty(await visit.Page.EvaluateAsync<string[]>(ComeApart));
            Assert.True(await visit.Page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"),
                path);
        }
    }
}
