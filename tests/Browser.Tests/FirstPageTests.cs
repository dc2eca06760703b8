using DxAssistant.Bot.Tests.Server.Commands;
using DxAssistant.Server.Workbench.Preview;
using Microsoft.AspNetCore.Builder;
using Microsoft.Playwright;

namespace DxAssistant.Browser.Tests;

/// <summary>A newcomer's first page as the manual leads to it, looked at in the preview on the way.</summary>
public sealed class FirstPageTests : IDisposable
{
    private const string Page = "checks/fan-capacitor-value.md";
    private const string Low =
        """{"series":"any-unit","symptom":"does-not-work","seen":[{"check":"fan-capacitor-value","outcome":"low"}]}""";
    private static readonly string Content = PagesOnDisk.RepositoryFolder("knowledge/Content");

    private readonly string root = Directory.CreateTempSubdirectory("first").FullName;

    public void Dispose() => Directory.Delete(root, recursive: true);

    // With DX_UPDATE=1 the pictures of the record are made anew.
    [ChromiumFact]
    public async Task Preview_OfTheFirstPage_ShowsWhatIsMissingAndThenTheWalk()
    {
        string folder = Path.Combine(root, "pages");
        string manual = await File.ReadAllTextAsync(Path.Combine(Content, "MANUAL.md"));
        var steps = new ManualSteps(manual, folder);
        await using var visit = await Visit.StartAsync(width: 1000, height: 700);
        PreviewPages? pages = null;
        WebApplication? app = null;
        await steps.TakeAsync(async () =>
        {
            if (pages is not null) pages.Reload();
            else if (File.Exists(Path.Combine(folder, Page)))
            {
                (pages = new PreviewPages(folder)).Reload();
                await (app = PreviewServer.Build(pages, 0)).StartAsync();
                await visit.Page.GotoAsync($"{app.Urls.First()}/?page={Page}");
                await visit.Page.WaitForSelectorAsync("#page .wrong");
                await KeepAsync(visit, "missing", "#page");
            }
        });
        await visit.Page.WaitForFunctionAsync("() => !document.querySelector('#page .wrong')");
        await KeepAsync(visit, "right", "#page");
        await visit.Page.GotoAsync($"{app!.Urls.First()}/?page={Page}&walk={Uri.EscapeDataString(Low)}");
        await visit.Page.WaitForFunctionAsync(
            "() => document.getElementById('walk').textContent.includes('Replace the fan capacitor')");
        await KeepAsync(visit, "walk", "#walk");
        Assert.Empty(visit.Errors);
        await app.DisposeAsync();
    }

    private static async Task KeepAsync(Visit visit, string name, string part)
    {
        await visit.PictureAsync($"first-{name}");
        if (Environment.GetEnvironmentVariable("DX_UPDATE") != "1") return;
        await visit.Page.Locator(part)
            .ScreenshotAsync(new() { Path = Path.Combine(Content, "first-page", name + ".png") });
    }
}
