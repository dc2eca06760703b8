namespace DxAssistant.Browser.Tests;

/// <summary>A whole walk over the shipped pages: from the first words to the closed case.</summary>
public sealed class ShippedContentTests
{
    [ChromiumTheory]
    [InlineData("Pixel 7")]
    [InlineData(null)]
    public async Task Walk_OverTheShippedPages_ReachesTheEndAndStaysAccessible(string? device)
    {
        await using var site = await Site.StartAsync(() => Shipped.Pages);
        await using var visit = await Visit.StartAsync(device);
        await visit.OpenAsync(site.Address);
        var walk = new PlugWalk(visit);
        var kinds = new HashSet<string>();
        while (!await walk.IsOverAsync())
        {
            string kind = await walk.KindAsync();
            if (kinds.Add(kind)) await Look.AccessibleAsync(visit, kind);
            await walk.AnswerAsync();
        }

        Assert.Equal("closed", await walk.KindAsync());
        Assert.Contains("check", kinds);
        Assert.Empty(visit.Errors);
        await visit.Page.GotoAsync(visit.Page.Url + "/sheet");
        await visit.Page.WaitForSelectorAsync(".summary h2");
        await Look.AccessibleAsync(visit, "summary");
        string summary = await visit.Page.InnerTextAsync(".summary");
        Assert.Contains("Compressor plug or lead loose", summary, StringComparison.Ordinal);
        Assert.Contains("the unit works", summary, StringComparison.Ordinal);
    }

    // Loaded anew after every answer, as by somebody who looks into another app in between; what is seen makes the film
    // strip.
    [ChromiumFact]
    public async Task Walk_ReloadedAtEveryStep_IsTheSameSheetAndReachesTheEnd()
    {
        await using var site = await Site.StartAsync(() => Shipped.Pages);
        await using var visit = await Visit.StartAsync("Pixel 7");
        await visit.OpenAsync(site.Address);
        var (walk, strip) = (new PlugWalk(visit), new FilmStrip(visit));
        while (!await walk.IsOverAsync())
        {
            await strip.TakeAsync();
            await walk.AnswerAsync();
            string sheet = await SheetAsync(visit);
            await visit.Page.ReloadAsync();
            await visit.Page.WaitForSelectorAsync("body[data-ready=yes]");
            Assert.Equal(sheet, await SheetAsync(visit));
        }

        await strip.TakeAsync();
        await strip.KeepAsync("walk");
        Assert.Equal("closed", await walk.KindAsync());
        Assert.Equal(walk.Answers,
            (await site.ReadAsync(new Uri(visit.Page.Url).Segments[^1])).Select(stored => stored.TurnId).Distinct()
                .Count() - 1);
    }

    private static async Task<string> SheetAsync(Visit visit) =>
        await visit.Page.TextContentAsync("#rows") + await visit.Page.TextContentAsync("#slip-question");
}
