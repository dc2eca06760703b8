using Microsoft.Playwright;

namespace DxAssistant.Browser.Tests;

/// <summary>The screens that no other test walks over, in both shades, on a phone and at a desk.</summary>
public sealed class ScreenTests
{
    [ChromiumTheory]
    [InlineData("Pixel 7")]
    [InlineData(null)]
    public async Task Screens_OfASheet_LookAsBeforeAndAreAccessible(string? device)
    {
        await using var site = await Site.StartAsync();
        await using var visit = await Visit.StartAsync(device);
        await visit.OpenAsync(site.Address);
        await visit.WriteAsync("compressor does not start");
        string sheet = visit.Page.Url;

        await AtAsync(visit, $"{sheet}/job", "job");
        await AtAsync(visit, $"{site.Address}/cases", "cases");
        await AtAsync(visit, $"{site.Address}/device", "device", "#kept dd");
        await AtAsync(visit, $"{site.Address}/claims", "claims");
        Assert.Empty(visit.Errors);
    }

    [ChromiumTheory]
    [InlineData("Pixel 7")]
    [InlineData(null)]
    public async Task Screens_OfAccountsAndPrivacy_LookAsBeforeAndAreAccessible(string? device)
    {
        await using var site = await Site.StartAsync(() => Shipped.Pages);
        await using var visit = await Visit.StartAsync(device);

        await AtAsync(visit, $"{site.Address}/sign-in", "sign-in");
        await AtAsync(visit, $"{site.Address}/sign-in/password", "password");
        await AtAsync(visit, $"{site.Address}/accounts", "accounts");
        await AtAsync(visit, $"{site.Address}/privacy", "privacy");
        Assert.Empty(visit.Errors);
    }

    // The claim is a kept one, so that no change of the pages changes the picture.
    [ChromiumTheory]
    [InlineData("Pixel 7")]
    [InlineData(null)]
    public async Task Screen_OfAClaim_LooksAsBeforeOnPaperToo(string? device)
    {
        await using var site = await Site.StartAsync();
        await using var visit = await Visit.StartAsync(device);
        string kept = await File.ReadAllTextAsync(Path.Combine(Look.Folder, "claim.json"));
        await visit.Page.RouteAsync("**/api/claims/*",
            route => route.FulfillAsync(new() { ContentType = "application/json", Body = kept }));

        await AtAsync(visit, $"{site.Address}/claim/kept", "claim");
        await visit.Page.EmulateMediaAsync(new() { Media = Media.Print });
        await Look.AsBeforeAsync(visit, $"claim-paper-{visit.Name.Split('-')[0]}");
        Assert.Empty(visit.Errors);
    }

    // A page that is not for this account says so and shows the way out.
    [ChromiumFact]
    public async Task Screen_OfAPageNotForOne_LooksAsBeforeAndIsAccessible()
    {
        await using var crew = await Crew.StartAsync("dora");

        foreach (var visit in new[] { crew.Tom, crew.Other })
        {
            await visit.Page.GotoAsync($"{crew.Site.Address}/accounts");
            await visit.Page.GetByRole(AriaRole.Button, new() { NameRegex = new("^Sign out") }).WaitForAsync();
            await visit.LookInBothShadesAsync("refused");
        }
    }

    private static async Task AtAsync(Visit visit, string address, string name, string? passing = null)
    {
        await visit.OpenAsync(address);
        await visit.LookInBothShadesAsync(name, passing);
    }
}
