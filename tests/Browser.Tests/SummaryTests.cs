using Microsoft.Playwright;

namespace DxAssistant.Browser.Tests;

/// <summary>The summary of a case, on the screen and on paper.</summary>
public sealed class SummaryTests
{
    // Name and version of the sheet.
    private const string Passing = ".facts.head dd:nth-of-type(n+5)";

    [ChromiumTheory]
    [InlineData("Pixel 7")]
    [InlineData(null)]
    public async Task Summary_LooksAsBeforeAndIsAccessible(string? device)
    {
        await using var site = await Site.StartAsync();
        await using var visit = await Visit.StartAsync(device);
        await OpenSummaryAsync(visit, site);

        await visit.LookInBothShadesAsync("summary", Passing);
        Assert.Empty(visit.Errors);
    }

    [ChromiumFact]
    public async Task Summary_OnPaper_HasNoButtonsAndIsBlackOnWhite()
    {
        await using var site = await Site.StartAsync();
        await using var visit = await Visit.StartAsync(shade: ColorScheme.Dark);
        await OpenSummaryAsync(visit, site);

        await visit.Page.EmulateMediaAsync(new() { Media = Media.Print });
        await Look.AsBeforeAsync(visit, "summary-paper", Passing);

        Assert.False(await visit.Page.Locator("#print").IsVisibleAsync());
        Assert.Equal(
            "rgb(255, 255, 255)",
            await visit.Page.EvaluateAsync<string>("getComputedStyle(document.body).backgroundColor"));
        Assert.Equal(
            "rgb(0, 0, 0)",
            await visit.Page.EvaluateAsync<string>("getComputedStyle(document.querySelector('.summary')).color"));
        Assert.True(await visit.Page.Locator(".signed").IsVisibleAsync());
    }

    [ChromiumTheory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task Share_GivesTheSummaryInPlainLines(bool toAnotherApp)
    {
        await using var site = await Site.StartAsync();
        await using var visit = await Visit.StartAsync("Pixel 7");
        await visit.Context.GrantPermissionsAsync(["clipboard-read", "clipboard-write"]);
        await visit.Page.AddInitScriptAsync(toAnotherApp
            ? "Navigator.prototype.share = async given => { window.shared = given.text; }"
            : "Navigator.prototype.share = undefined");
        await OpenSummaryAsync(visit, site);

        await visit.Page.ClickAsync("#share");
        if (!toAnotherApp) await visit.Page.GetByText("The summary is copied").WaitForAsync();
        string text =
            await visit.Page.EvaluateAsync<string>(toAnotherApp ? "window.shared" : "navigator.clipboard.readText()");

        Assert.StartsWith("Job sheet ", text, StringComparison.Ordinal);
        Assert.Contains("Fault proven: none yet", text, StringComparison.Ordinal);
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
