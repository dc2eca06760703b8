using Microsoft.Playwright;

namespace DxAssistant.Browser.Tests;

/// <summary>The work list of the desk: found as one types, by keys alone, kept views, changes as they happen.</summary>
public sealed class WorkTests
{
    [ChromiumTheory]
    [InlineData("Pixel 7", ColorScheme.Light)]
    [InlineData("Pixel 7", ColorScheme.Dark)]
    [InlineData(null, ColorScheme.Light)]
    [InlineData(null, ColorScheme.Dark)]
    public async Task List_LooksAsBeforeAndIsAccessible(string? device, ColorScheme shade)
    {
        await using var site = await Site.StartAsync();
        await using var visit = await Visit.StartAsync(device, shade);
        await SayAsync(visit, site, "compressor does not start");
        await OpenAsync(visit, site);

        await visit.LookAsync("work");
        Assert.Empty(visit.Errors);
    }

    [ChromiumFact]
    public async Task Keys_Alone_FindMoveAndOpen()
    {
        await using var site = await Site.StartAsync();
        await using var visit = await Visit.StartAsync();
        await SayAsync(visit, site, "compressor does not start");
        await SayAsync(visit, site, "compressor will not start, call 555 0142");
        await OpenAsync(visit, site);

        await visit.Page.Keyboard.PressAsync("/");
        await visit.Page.Keyboard.TypeAsync("555 01");
        await CountAsync(visit, "1 sheet fits.");
        await visit.Page.Keyboard.PressAsync("ArrowDown");
        await visit.Page.Keyboard.PressAsync("Enter");
        await visit.Page.WaitForURLAsync("**/case/**");

        Assert.Contains("compressor will not start, call 555 0142",
            await visit.Page.Locator(".exchange").First.TextContentAsync(), StringComparison.Ordinal);
    }

    [ChromiumFact]
    public async Task View_Kept_ComesBackByItsNumber()
    {
        await using var site = await Site.StartAsync();
        await using var visit = await Visit.StartAsync();
        await SayAsync(visit, site, "compressor does not start");
        await OpenAsync(visit, site);
        await visit.Page.FillAsync("#find", "nowhere");
        await CountAsync(visit, "No sheet fits.");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Keep this view" }).ClickAsync();

        await OpenAsync(visit, site);
        await CountAsync(visit, "1 sheet fits.");
        await visit.Page.Keyboard.PressAsync("1");

        await CountAsync(visit, "No sheet fits.");
        Assert.Equal("nowhere", await visit.Page.InputValueAsync("#find"));
    }

    [ChromiumFact]
    public async Task Sheet_FilledInElsewhere_ComesIntoTheList()
    {
        await using var site = await Site.StartAsync();
        await using var desk = await Visit.StartAsync();
        await using var roof = await Visit.StartAsync("Pixel 7");
        await OpenAsync(desk, site);
        await CountAsync(desk, "No sheet fits.");

        await SayAsync(roof, site, "compressor does not start");

        await CountAsync(desk, "1 sheet fits.");
    }

    // A hundred at first; the arrow at the last one goes on to the rest, and a change elsewhere leaves them there.
    [ChromiumFact]
    public async Task Keys_AtTheLastLine_BringTheRest()
    {
        await using var site = await Site.StartAsync();
        await using var visit = await Visit.StartAsync();
        await OpenAsync(visit, site);
        await AddAsync(visit, 0, 130);
        await OpenAsync(visit, site); // anew: a list read just as the hundredth came goes on with those after it
        await CountAsync(visit, "The first 100 sheets that fit.");

        await visit.Page.Locator("#rows a").Last.FocusAsync();
        await visit.Page.Keyboard.PressAsync("ArrowDown");
        await CountAsync(visit, "130 sheets fit.");
        Assert.Equal("compressor 29 does not start",
            await visit.Page.EvaluateAsync<string>("document.activeElement.textContent"));

        await AddAsync(visit, 130, 131);
        await CountAsync(visit, "131 sheets fit.");
        Assert.False(await visit.Page.Locator("#more").IsVisibleAsync());
        Assert.Empty(visit.Errors);
    }

    // By the page's own requests, as many sheets at a time.
    private static async Task AddAsync(Visit visit, int from, int to) => await visit.Page.EvaluateAsync(
        """
        async ([from, to]) => {
          for (let number = from; number < to; number++) {
            const { id } = await (await fetch('/api/cases', { method: 'POST' })).json();
            await fetch(`/api/cases/${id}/turns`, { method: 'POST', headers: { 'Content-Type': 'application/json' }, body: JSON.stringify({ turnId: 't1', text: `compressor ${number} does not start` }) });
          }
        }
        """, new[] { from, to });

    private static async Task SayAsync(Visit visit, Site site, string words)
    {
        await visit.OpenAsync(site.Address);
        await visit.WriteAsync(words);
    }

    private static async Task OpenAsync(Visit visit, Site site)
    {
        await visit.Page.GotoAsync($"{site.Address}/work");
        await visit.Page.WaitForSelectorAsync("body[data-ready]");
    }

    private static Task<IJSHandle> CountAsync(Visit visit, string says) =>
        visit.Page.WaitForFunctionAsync("says => document.getElementById('count').textContent === says", says);
}
