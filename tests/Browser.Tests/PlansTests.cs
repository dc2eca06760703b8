using DxAssistant.Server.Serving;
using DxAssistant.Server.Workbench.Preview;
using Microsoft.AspNetCore.Builder;
using Microsoft.Playwright;

namespace DxAssistant.Browser.Tests;

/// <summary>
/// Pictures of the pages in a browser: size by buttons, keys, wheel and fingers; boxes that lead to their pages.
/// </summary>
public sealed class PlansTests : IAsyncLifetime
{
    private const string Symptom = "?kind=symptom&series=brenholt-ws&symptom=room-sensor-code";

    private WebApplication app = null!;

    public async Task InitializeAsync()
    {
        var pages = new PreviewPages(ContentPlace.Find()!);
        pages.Reload();
        app = PreviewServer.Build(pages, 0);
        await app.StartAsync();
    }

    public async Task DisposeAsync() => await app.DisposeAsync();

    [ChromiumTheory]
    [InlineData("walk", "Pixel 7", ColorScheme.Light)]
    [InlineData("walk", null, ColorScheme.Dark)]
    [InlineData("symptom", "Pixel 7", ColorScheme.Dark)]
    [InlineData("symptom", null, ColorScheme.Light)]
    [InlineData("coverage", "Pixel 7", ColorScheme.Light)]
    [InlineData("coverage", null, ColorScheme.Dark)]
    public async Task Picture_EachKind_IsAccessibleAndNoWiderThanTheScreen(string kind, string? device,
        ColorScheme shade)
    {
        await using var visit =
            await OpenAsync($"?kind={kind}&series=brenholt-ws&symptom=room-sensor-code", device, shade);

        await Look.AccessibleAsync(visit, kind);
        Assert.True(await visit.Page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"));
        Assert.Empty(visit.Errors);
    }

    [ChromiumFact]
    public async Task Size_ButtonsKeysAndWheel_ChangeItAndTheWholeWidthComesBack()
    {
        await using var visit = await OpenAsync(Symptom);
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Whole width" }).ClickAsync();
        double whole = await WidthAsync(visit);
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Larger" }).ClickAsync();
        double larger = await WidthAsync(visit);
        Assert.InRange(larger, whole * 1.2, whole * 1.3);
        await visit.Page.FocusAsync("#paper");
        await visit.Page.Keyboard.PressAsync("+");
        Assert.True(await WidthAsync(visit) > larger * 1.2);
        await visit.Page.Keyboard.PressAsync("0");
        Assert.Equal(whole, await WidthAsync(visit), 1.0);
        await visit.Page.Locator("#paper").HoverAsync();
        await visit.Page.Keyboard.DownAsync("Control");
        await visit.Page.Mouse.WheelAsync(0, -100);
        await visit.Page.Keyboard.UpAsync("Control");
        await visit.Page.WaitForFunctionAsync(
            "least => document.querySelector('#paper svg').getBoundingClientRect().width > least", whole * 1.1);
    }

    [ChromiumFact]
    public async Task Size_TwoFingersApart_MakeItLarger()
    {
        await using var visit = await OpenAsync(Symptom, "Pixel 7");
        double before = await WidthAsync(visit);
        await visit.Page.EvaluateAsync("""
            () => {
              const paper = document.getElementById('paper');
              const frame = paper.getBoundingClientRect();
              const finger = (identifier, x) => new Touch({ identifier, target: paper, clientX: frame.left + x, clientY: frame.top + 80 });
              const send = (type, touches) => paper.dispatchEvent(new TouchEvent(type, { touches, bubbles: true, cancelable: true }));
              send('touchstart', [finger(1, 100), finger(2, 150)]);
              send('touchmove', [finger(1, 100), finger(2, 150)]);
              send('touchmove', [finger(1, 60), finger(2, 160)]);
              send('touchend', []);
            }
            """);
        Assert.InRange(await WidthAsync(visit), before * 1.9, before * 2.1);
    }

    [ChromiumFact]
    public async Task Box_ChosenWithTheKeyboard_LeadsToItsPage()
    {
        await using var visit = await OpenAsync(Symptom);
        await visit.Page.Locator("#paper a", new() { HasText = "Room air sensor failed" }).First.FocusAsync();
        await visit.Page.Keyboard.PressAsync("Enter");
        await visit.Page.WaitForFunctionAsync(
            "() => document.getElementById('page-name')?.textContent === 'faults/sensor-room-air.md'");
    }

    [ChromiumFact]
    public async Task Words_OfTheWalk_NameEachBox()
    {
        await using var visit = await OpenAsync("?kind=walk&series=brenholt-ws&symptom=room-sensor-code&checks=4");
        int boxes = await visit.Page.Locator("#paper a:has(rect)").CountAsync();
        Assert.True(boxes > 3);
        for (int number = 1; number <= boxes; number++)
            Assert.True(await visit.Page.Locator("#words li", new() { HasText = $"{number}. " }).CountAsync() > 0);
        byte[] pdf = await visit.Page.PdfAsync(new() { PreferCSSPageSize = true });
        Assert.Contains("/Count 1", System.Text.Encoding.Latin1.GetString(pdf), StringComparison.Ordinal);
    }

    private static Task<double> WidthAsync(Visit visit) =>
        visit.Page.EvaluateAsync<double>("() => document.querySelector('#paper svg').getBoundingClientRect().width");

    private async Task<Visit> OpenAsync(string query, string? device = null, ColorScheme shade = ColorScheme.Light)
    {
        var visit = await Visit.StartAsync(device, shade);
        await visit.Page.GotoAsync(app.Urls.First() + "/pictures.html" + query);
        await visit.Page.WaitForSelectorAsync("body[data-ready] #paper svg");
        return visit;
    }
}
