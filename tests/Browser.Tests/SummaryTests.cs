using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace DxAssistant.Browser.Tests;

/// <summary>The summary of a case, on the screen and on paper.</summary>
public sealed class SummaryTests
{
    [ChromiumTheory]
    [InlineData("Pixel 7", ColorScheme.Light)]
    [InlineData(null, ColorScheme.Dark)]
    public async Task Summary_IsAccessible(string? device, ColorScheme shade)
    {
        await using var site = await Site.StartAsync();
        await using var visit = await Visit.StartAsync(device, shade);
        await OpenSummaryAsync(visit, site);
        await visit.PictureAsync($"summary-{device ?? "desk"}-{shade}".Replace(' ', '-'), whole: true);

        var result = await visit.Page.RunAxe();

        Assert.True(
            result.Violations.Length == 0,
            string.Join("\n", result.Violations.Select(v => $"{v.Id}: {v.Nodes[0].Html}")));
        Assert.Empty(visit.Errors);
    }

    [ChromiumFact]
    public async Task Summary_OnPaper_HasNoButtonsAndIsBlackOnWhite()
    {
        await using var site = await Site.StartAsync();
        await using var visit = await Visit.StartAsync(shade: ColorScheme.Dark);
        await OpenSummaryAsync(visit, site);

        await visit.Page.EmulateMediaAsync(new() { Media = Media.Print });
        await visit.PictureAsync("summary-paper", whole: true);

        Assert.False(await visit.Page.Locator("#print").IsVisibleAsync());
        Assert.Equal(
            "rgb(255, 255, 255)",
            await visit.Page.EvaluateAsync<string>("getComputedStyle(document.body).backgroundColor"));
        Assert.Equal(
            "rgb(0, 0, 0)",
            await visit.Page.EvaluateAsync<string>("getComputedStyle(document.querySelector('.summary')).color"));
        Assert.True(await visit.Page.Locator(".signed").IsVisibleAsync());
    }

    [ChromiumFact]
    public async Task Earlier_AfterACase_ListsItByItsFirstWords()
    {
        await using var site = await Site.StartAsync();
        await using var visit = await Visit.StartAsync();
        await visit.OpenAsync(site.Address);
        await visit.WriteAsync("compressor does not start");

        await visit.Page.GotoAsync($"{site.Address}/cases");
        await visit.Page.GetByText("compressor does not start").ClickAsync();
        await visit.Page.WaitForSelectorAsync("body[data-ready=yes]");

        Assert.StartsWith(
            "Step 1 of 2.", await visit.Page.TextContentAsync("#slip-question"), StringComparison.Ordinal);
    }

    private static async Task OpenSummaryAsync(Visit visit, Site site)
    {
        await visit.OpenAsync(site.Address);
        await visit.WriteAsync("compressor does not start");
        await visit.Page.GetByRole(AriaRole.Link, new() { Name = "Print" }).ClickAsync();
        await visit.Page.WaitForSelectorAsync(".summary h2");
    }
}
