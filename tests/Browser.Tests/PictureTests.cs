using System.Xml.Linq;
using Microsoft.Playwright;

namespace DxAssistant.Browser.Tests;

/// <summary>Pictures of the shipped pages in a real page: seen, said, enlarged, on light and dark paper.</summary>
public sealed class PictureTests
{
    private const int MostTurns = 40;

    [ChromiumTheory]
    [InlineData("Pixel 7", ColorScheme.Light)]
    [InlineData("Pixel 7", ColorScheme.Dark)]
    [InlineData(null, ColorScheme.Light)]
    [InlineData(null, ColorScheme.Dark)]
    public async Task Walk_RoomSensor_ShowsDisplayCurveAndHowItNarrowed(string? device, ColorScheme shade)
    {
        await using var site = await Site.StartAsync(() => Shipped.Pages);
        await using var visit = await Visit.StartAsync(device, shade);
        await WalkAsync(visit, site);

        Assert.True(await visit.Page.Locator(".picture.display svg").First.IsVisibleAsync());
        Assert.True(await visit.Page.Locator(".steps .picture.page svg").First.IsVisibleAsync());
        await KeepAsync(visit, ".row:has(.picture.page)", $"picture-how-{device ?? "desk"}-{shade}");
        Assert.True(await visit.Page.Locator(".picture.sensor-curve svg").First.IsVisibleAsync());
        await KeepAsync(visit, ".row:has(.picture.display)", $"picture-display-{device ?? "desk"}-{shade}");
        await visit.Page.EvaluateAsync("document.querySelector('.exchange:has(.sensor-curve)').scrollIntoView()");
        await visit.PictureAsync($"verdict-{device ?? "desk"}-{shade}".Replace(' ', '-'));
        await visit.Page.ClickAsync(".folded > summary");
        Assert.True(await visit.Page.Locator(".picture.ledger svg").IsVisibleAsync());
        Assert.True(await visit.Page.Locator(".picture.belief svg").First.IsVisibleAsync());
        await KeepAsync(visit, ".exchange:has(.picture.sensor-curve)", $"picture-verdict-{device ?? "desk"}-{shade}");
        await CheckAsync(visit);
        Assert.Empty(visit.Errors);
    }

    [ChromiumTheory]
    [InlineData(ColorScheme.Light)]
    [InlineData(ColorScheme.Dark)]
    public async Task Picture_Tapped_IsLargeAndCloses(ColorScheme shade)
    {
        await using var site = await Site.StartAsync(() => Shipped.Pages);
        await using var visit = await Visit.StartAsync("Pixel 7", shade);
        await WalkAsync(visit, site);

        var small = visit.Page.GetByRole(AriaRole.Button, new()
        {
            NameRegex = new("^Picture, tap to enlarge: On the sensor curve, 2.1 kΩ"),
        });
        await small.ClickAsync();
        var large = visit.Page.Locator("dialog.large");
        Assert.Contains("lies below the expected", await large.InnerTextAsync(), StringComparison.Ordinal);
        await visit.PictureAsync($"picture-large-{shade}");
        var saved = await visit.Page.RunAndWaitForDownloadAsync(() => large.GetByText("Save as a file").ClickAsync());
        Assert.Matches("^sensor-curve-[0-9a-f]{8}\\.svg$", saved.SuggestedFilename);
        string file = await File.ReadAllTextAsync(await saved.PathAsync());
        Assert.Equal("svg", XElement.Parse(file).Name.LocalName);
        Assert.Contains("screen and (prefers-color-scheme:dark)", file, StringComparison.Ordinal);
        await CheckAsync(visit);
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Close" }).ClickAsync();
        await large.WaitForAsync(new() { State = WaitForSelectorState.Detached });
    }

    // 1.4.10 Reflow (WCAG 2.2): the smallest text of any picture, as the narrowest phone shows it.
    [ChromiumFact]
    public async Task Picture_OnTheNarrowestPhone_CanBeRead()
    {
        await using var site = await Site.StartAsync(() => Shipped.Pages);
        await using var visit = await Visit.StartAsync(width: 320, height: 640);
        await WalkAsync(visit, site);
        await visit.Page.EvaluateAsync("document.querySelectorAll('details').forEach(d => d.open = true)");

        double smallest = await visit.Page.EvaluateAsync<double>("""
            Math.min(...[...document.querySelectorAll('.drawing')].flatMap(svg =>
              [...svg.querySelectorAll('text')].map(text => parseFloat(getComputedStyle(text).fontSize) * svg.getScreenCTM().a)))
            """);

        await KeepAsync(visit, ".exchange:has(.picture.sensor-curve)", "picture-verdict-320");
        Assert.True(smallest >= 10, $"the smallest text of a picture is {smallest} pixels high");
        Assert.True(await visit.Page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"));
    }

    [ChromiumFact]
    public async Task Options_OfLookAlikeCodes_ShowTheDisplay()
    {
        await using var site = await Site.StartAsync(() => Shipped.Pages);
        await using var visit = await Visit.StartAsync("Pixel 7");
        await visit.OpenAsync(site.Address);
        await visit.WriteAsync("E5");
        await visit.AnswerAsync(() => visit.Page.ClickAsync("[data-key=brenholt-ws]"));

        Assert.Equal(2, await visit.Page.Locator(".option.drawn svg").CountAsync());
        await visit.PictureAsync("picture-codes");
        await CheckAsync(visit);
    }

    [ChromiumFact]
    public async Task Summary_OfTheCase_ShowsThePictures()
    {
        await using var site = await Site.StartAsync(() => Shipped.Pages);
        await using var visit = await Visit.StartAsync();
        await WalkAsync(visit, site);
        await visit.Page.GotoAsync(visit.Page.Url + "/sheet");
        await visit.Page.WaitForSelectorAsync(".summary h2");

        Assert.True(await visit.Page.Locator(".summary .belief svg[role=img]").IsVisibleAsync());
        Assert.True(await visit.Page.Locator(".summary .sensor-curve svg[role=img]").IsVisibleAsync());
        await visit.PictureAsync("picture-summary", whole: true);
        await CheckAsync(visit);
        Assert.Empty(visit.Errors);
    }

    // As far as the repair: the sensor is read as soon as it is asked for.
    private static async Task WalkAsync(Visit visit, Site site)
    {
        await visit.OpenAsync(site.Address);
        await visit.WriteAsync("b4");
        await visit.AnswerAsync(() => visit.Page.ClickAsync("[data-key=brenholt-ws]"));
        await visit.AnswerAsync(() => visit.Page.ClickAsync("[data-key=technician]"));
        for (int turn = 0; turn < MostTurns; turn++)
        {
            if (await visit.Page.GetAttributeAsync("#slip", "data-kind") == "repair") return;
            await visit.AnswerAsync(() => AnswerAsync(visit));
        }

        Assert.Fail("the walk leads to no repair");
    }

    private static async Task AnswerAsync(Visit visit)
    {
        var inputs = await visit.Page.Locator(".reading-input").AllAsync();
        if (inputs.Count == 2)
        {
            await inputs[0].FillAsync("2.1");
            await inputs[1].FillAsync("24C");
        }
        else if (inputs.Count > 0)
        {
            foreach (var input in inputs) await input.FillAsync("0");
        }
        else
        {
            await visit.Page.Locator(".option").First.ClickAsync();
            return;
        }

        await visit.Page.ClickAsync(".readings .main");
    }

    private static async Task KeepAsync(Visit visit, string selector, string name)
    {
        if (Environment.GetEnvironmentVariable("DX_PICTURES") is not { } folder) return;
        await visit.Page.EvaluateAsync("document.querySelector('.slip').style.position = 'static'");
        await visit.Page.Locator(selector).First.ScreenshotAsync(new()
        {
            Path = Path.Combine(folder, name.Replace(' ', '-') + ".png"),
        });
    }

    private static Task CheckAsync(Visit visit) => Look.AccessibleAsync(visit, "pictures");
}
