using Microsoft.Playwright;

namespace DxAssistant.Browser.Tests;

/// <summary>
/// The walk on the phone: read aloud, answered by single keys, put aside, found by the number and taken up again.
/// </summary>
public sealed class CallTests
{
    [ChromiumFact]
    public async Task Call_ByKeysAlone_AnswersNotesPutsAsideAndTakesUp()
    {
        await using var site = await Site.StartAsync();
        await using var visit = await Visit.StartAsync();
        await OpenAsync(visit, site);
        string before = await visit.Page.TextContentAsync("#script") ?? "";

        await visit.Page.Keyboard.PressAsync("1");
        await visit.Page.WaitForFunctionAsync("was => document.getElementById('script').textContent !== was", before);
        await visit.Page.FillAsync("#words", "half a sentence");
        await visit.Page.EvaluateAsync("document.querySelector('.aloud').dataset.read = 'once'");
        await visit.Page.Keyboard.PressAsync("Escape");
        await visit.Page.Keyboard.PressAsync("n");
        await visit.Page.Keyboard.TypeAsync("has no ladder");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Note it" }).ClickAsync();
        await visit.Page.Locator("#notes >> text=has no ladder").WaitForAsync();
        Assert.Equal("half a sentence", await visit.Page.InputValueAsync("#words"));
        Assert.Equal("once", await visit.Page.GetAttributeAsync(".aloud", "data-read"));
        await visit.Page.FillAsync("[name=caller]", "Ingrid");
        await visit.Page.FillAsync("[name=phone]", "+1 555 0142");
        await visit.Page.Keyboard.PressAsync("Escape");
        await visit.Page.Keyboard.PressAsync("p");
        await visit.Page.Locator("#waiting >> text=Ingrid").WaitForAsync();
        await visit.PictureAsync("call-aside", whole: true);
        string paused = await AloudAsync(visit);
        await visit.OpenAsync($"{site.Address}/work?find=5550143");
        Assert.False(await visit.Page.Locator("#calls").IsVisibleAsync());
        await visit.Page.FillAsync("#find", "(555) 0142");
        await visit.Page.Locator("#calls a", new() { HasText = "Ingrid, +1 555 0142" }).ClickAsync();
        await visit.Page.Locator(".paused button").WaitForAsync();
        Assert.Equal(paused, await AloudAsync(visit));
        await visit.Page.Keyboard.PressAsync("p");
        await visit.Page.Locator(".paused button").WaitForAsync(new() { State = WaitForSelectorState.Detached });

        Assert.Equal(0, await visit.Page.Locator("#waiting li").CountAsync());
        Assert.Empty(visit.Errors);
    }

    [ChromiumTheory]
    [InlineData("Pixel 7")]
    [InlineData(null)]
    public async Task Call_LooksAsBeforeAndIsAccessible(string? device)
    {
        await using var site = await Site.StartAsync();
        await using var visit = await Visit.StartAsync(device);
        await OpenAsync(visit, site);

        await visit.LookInBothShadesAsync("call");
    }

    private static async Task OpenAsync(Visit visit, Site site)
    {
        await visit.OpenAsync(site.Address);
        await visit.WriteAsync("compressor does not start");
        await visit.Page.GetByRole(AriaRole.Link, new() { Name = "Phone" }).ClickAsync();
        await visit.Page.Locator(".aloud").WaitForAsync();
    }

    private static async Task<string> AloudAsync(Visit visit) => await visit.Page.TextContentAsync(".aloud") ?? "";
}
