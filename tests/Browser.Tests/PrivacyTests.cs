using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace DxAssistant.Browser.Tests;

/// <summary>The page on personal data: read by anybody, and the desk finds and removes there.</summary>
public sealed class PrivacyTests
{
    [ChromiumTheory]
    [InlineData("Pixel 7", ColorScheme.Dark)]
    [InlineData(null, ColorScheme.Light)]
    public async Task Page_FindsAndRemovesForGood_AndIsAccessible(string? device, ColorScheme shade)
    {
        await using var site = await Site.StartAsync(() => Shipped.Pages);
        await using var visit = await Visit.StartAsync(device, shade);
        await visit.OpenAsync(site.Address);
        await visit.WriteAsync("Mrs Ottery says the indoor fan stands");
        await visit.OpenAsync($"{site.Address}/privacy");
        Assert.Equal(7, await visit.Page.Locator("#kinds tr").CountAsync());

        await visit.Page.FillAsync("#about", "ottery");
        await visit.Page.PressAsync("#about", "Enter");
        await visit.Page.GetByText("1 sheet speaks of that.").WaitForAsync();
        await visit.PictureAsync($"privacy-{device ?? "desk"}-{shade}".Replace(' ', '-'), whole: true);
        var result = await visit.Page.RunAxe();
        await visit.Page.Locator("#rows button").ClickAsync();
        Assert.Contains("ottery",
            await visit.Page.EvaluateAsync<string>(
                "async () => (await (await fetch('/api/personal?about=ottery')).text()).toLowerCase()"),
                StringComparison.Ordinal);
        await visit.Page.Locator("#rows button").ClickAsync();
        await visit.Page.GetByText("Removed", new() { Exact = true }).WaitForAsync();

        await visit.Page.PressAsync("#about", "Enter");
        await visit.Page.GetByText("No sheet speaks of that.").WaitForAsync();
        Assert.True(result.Violations.Length == 0,
            string.Join("\n", result.Violations.Select(v => $"{v.Id}: {v.Nodes[0].Html}")));
        Assert.Empty(visit.Errors);
    }
}
