using Microsoft.Playwright;

namespace DxAssistant.Browser.Tests;

/// <summary>
/// What is written down beside the walk: by keys alone, taken back, and asked about where it cannot be.
/// </summary>
public sealed class JobTests
{
    // The smallest picture: one grey point (PNG, ISO/IEC 15948).
    private const string Point =
        "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNkYPhfDwAChwGA60e6kgAAAABJRU5ErkJggg==";

    [ChromiumFact]
    public async Task WrittenDown_ByKeys_IsTakenBackOneAfterTheOther_AndTheFocusIsNeverLost()
    {
        await using var site = await Site.StartAsync();
        await using var visit = await Visit.StartAsync("Pixel 7");
        await OpenAsync(visit, site);
        await visit.Page.FillAsync("[name=note]", "dog in the yard");
        await PressAsync(visit, "#notes button");
        await visit.Page.Locator("#notes li", new() { HasText = "dog in the yard" }).WaitForAsync();
        await HeldAsync(visit, "notes-title");
        await PressAsync(visit, "#visits button");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Begin another visit" }).WaitForAsync();
        await HeldAsync(visit, "visits-title");
        await visit.Page.GetByText("Last written down: the end of a visit, by technician.").WaitForAsync();
        await visit.PictureAsync("job-change-phone");
        await Look.UsableAsync(visit, "job with a change");

        await PressAsync(visit, "#change button");
        await visit.Page.GetByText("Last written down: a note, by technician.").WaitForAsync();
        await HeldAsync(visit, "change");
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "This visit is over" }).WaitForAsync();
        await PressAsync(visit, "#change button");
        await visit.Page.WaitForFunctionAsync(
            "() => !document.querySelector('#change button') && !document.querySelector('#notes li')");
        await HeldAsync(visit, "job");
        Assert.Empty(visit.Errors);
    }

    [ChromiumFact]
    public async Task Photo_Removed_AsksFirst_AndLeavingTheButtonIsNo()
    {
        await using var site = await Site.StartAsync();
        await using var visit = await Visit.StartAsync();
        await OpenAsync(visit, site);
        await visit.Page.SetInputFilesAsync("#photo-file", new FilePayload
        {
            Name = "plate.png", MimeType = "image/png", Buffer = Convert.FromBase64String(Point),
        });
        var remove = visit.Page.Locator("#photos figure button");
        await remove.DblClickAsync();
        Assert.Equal("Remove for good", await remove.TextContentAsync());
        await visit.Page.FocusAsync("#photo-shows");
        Assert.Equal("Remove", await remove.TextContentAsync());
        Assert.Equal(1, await visit.Page.Locator("#photos figure").CountAsync());

        await remove.ClickAsync();
        await remove.ClickAsync();
        await visit.Page.Locator("#photos figure").WaitForAsync(new() { State = WaitForSelectorState.Detached });
        await HeldAsync(visit, "photos-title");
        Assert.Empty(visit.Errors);
    }

    private static async Task OpenAsync(Visit visit, Site site)
    {
        await visit.OpenAsync(site.Address);
        await visit.WriteAsync("compressor does not start");
        await visit.OpenAsync(visit.Page.Url + "/job");
    }

    private static async Task PressAsync(Visit visit, string selector)
    {
        await visit.Page.FocusAsync(selector);
        await visit.Page.Keyboard.PressAsync("Enter");
    }

    // 2.4.3 Focus order: what was pressed is drawn anew, and the focus goes to the part it stood in.
    private static Task<IJSHandle> HeldAsync(Visit visit, string id) =>
        visit.Page.WaitForFunctionAsync("id => document.activeElement.id === id", id);
}
