using DxAssistant.Server.Workbench.Preview;
using Microsoft.AspNetCore.Builder;
using Microsoft.Playwright;

namespace DxAssistant.Browser.Tests;

/// <summary>The author's proof in a browser: follows each save, says what is wrong where it is, plays walks.</summary>
public sealed class PreviewTests : IAsyncLifetime, IDisposable
{
    private readonly PagesOnDisk files = new();
    private PreviewPages pages = null!;
    private WebApplication app = null!;

    public async Task InitializeAsync()
    {
        pages = new PreviewPages(files.Folder);
        pages.Reload();
        app = PreviewServer.Build(pages, 0);
        await app.StartAsync();
    }

    public async Task DisposeAsync() => await app.DisposeAsync();

    public void Dispose() => files.Dispose();

    [ChromiumTheory]
    [InlineData("Pixel 7", ColorScheme.Light)]
    [InlineData("Pixel 7", ColorScheme.Dark)]
    [InlineData(null, ColorScheme.Light)]
    [InlineData(null, ColorScheme.Dark)]
    public async Task Proof_WithAMistakeAndAWalk_IsAccessible(string? device, ColorScheme shade)
    {
        files.Change("checks/fan-plug.md", text => text.Replace("who: technician", "who: technican"));
        await using var visit = await OpenAsync("?page=checks/fan-plug.md", device, shade);
        pages.Reload();
        await visit.Page.WaitForSelectorAsync(".page .wrong");
        files.Change("checks/fan-plug.md", text => text.Replace("who: technican", "who: technician"));
        pages.Reload();
        await visit.Page.WaitForFunctionAsync("() => !document.querySelector('.page .wrong')");
        await visit.Page.Locator(".walk-keys button").First.ClickAsync();
        await visit.Page.WaitForSelectorAsync(".walk-rows .pen");

        await visit.LookAsync("preview");
        files.Change("phrases.md", text => text + PicturePhrases());
        pages.Reload();
        await visit.Page.GotoAsync(app.Urls.First()
            + "/pictures.html?kind=walk&series=alder-one&symptom=fan-not-turning");
        await visit.Page.WaitForSelectorAsync("body[data-ready] #paper svg");
        await visit.LookAsync("pictures");
        Assert.Empty(visit.Errors);
    }

    [ChromiumFact]
    public async Task Answer_TappedWhileASaveIsBeingRead_Counts()
    {
        await using var visit = await OpenAsync("?page=checks/fan-plug.md");
        var asked = new TaskCompletionSource();
        var free = new TaskCompletionSource();
        await visit.Page.RouteAsync("**/api/preview/walk", async route =>
        {
            asked.TrySetResult();
            await free.Task;
            await route.ContinueAsync();
        });
        files.Change("checks/fan-plug.md", text => text + "\n");
        pages.Reload();
        await asked.Task;
        await visit.Page.Locator(".walk-keys button").First.ClickAsync();
        free.SetResult();
        await visit.Page.WaitForSelectorAsync(".walk-rows .pen");
    }

    [ChromiumFact]
    public async Task Mistake_InARowOfATable_StandsBelowThatRow_AndGoesWithTheNextSave()
    {
        await using var visit = await OpenAsync("?page=checks/fan-plug.md");
        string was = await File.ReadAllTextAsync(files.PathOf("checks/fan-plug.md"));
        int line = was.Split('\n').ToList().FindIndex(each => each.Contains("| home |", StringComparison.Ordinal)) + 1;
        files.Change("checks/fan-plug.md", text => text.Replace("| home | ", "| Ho me | "));
        pages.Reload();
        await visit.Page.WaitForSelectorAsync($"tr[data-line='{line}'] + tr .wrong");

        await File.WriteAllTextAsync(files.PathOf("checks/fan-plug.md"), was);
        pages.Reload();
        await visit.Page.WaitForFunctionAsync("() => !document.querySelector('.page .wrong')");
    }

    [ChromiumFact]
    public async Task Page_DeletedOrRenamedWhileOpen_SaysSoOrFollows()
    {
        await using var visit = await OpenAsync("?page=cautions/live-mains.md");
        File.Move(files.PathOf("cautions/live-mains.md"), files.PathOf("cautions/live-parts.md"));
        pages.Reload();
        await visit.Page.WaitForFunctionAsync(
            "() => document.getElementById('page-name').textContent === 'cautions/live-parts.md'");
        File.Delete(files.PathOf("cautions/live-parts.md"));
        pages.Reload();
        await visit.Page.WaitForFunctionAsync(
            "() => document.getElementById('page').textContent.startsWith('This page is gone')");
    }

    [ChromiumFact]
    public async Task Answers_InTheAddress_StartTheWalkThere_AndThoseThatFitNoMoreAreTold()
    {
        const string point =
            """{"series":"alder-one","symptom":"fan-not-turning","seen":[{"check":"fan-plug","outcome":"home"},{"check":"gone","outcome":"yes"}]}""";
        await using var visit = await OpenAsync("?walk=" + Uri.EscapeDataString(point));
        await visit.Page.WaitForSelectorAsync(".walk-unfit");
        Assert.Equal(2, await visit.Page.Locator(".walk-rows .pen").CountAsync());
        await visit.Page.Locator(".walk-rows .quiet").Last.ClickAsync();
        await visit.Page.WaitForFunctionAsync("() => !document.querySelector('.walk-unfit')");
        Assert.Contains("home", Uri.UnescapeDataString(visit.Page.Url), StringComparison.Ordinal);
        Assert.DoesNotContain("gone", Uri.UnescapeDataString(visit.Page.Url), StringComparison.Ordinal);
    }

    [ChromiumFact]
    public async Task Folder_Emptied_SaysThatThereAreNoPages()
    {
        await using var visit = await OpenAsync("");
        foreach (string file in Directory.EnumerateFiles(files.Folder, "*", SearchOption.AllDirectories))
            File.Delete(file);
        pages.Reload();
        await visit.Page.WaitForFunctionAsync(
            "() => document.getElementById('paths').textContent.includes('no pages here yet')");
        Assert.DoesNotContain(visit.Errors, error => !error.Contains("404", StringComparison.Ordinal));
    }

    // The small folder has none; those that are shipped will do.
    private static string PicturePhrases() => "\n## " + string.Join("\n## ", File.ReadAllText(
        Path.Combine(PagesOnDisk.RepositoryFolder("content"), "phrases.md")).Split("\n## ")
        .Where(phrase => phrase.StartsWith("picture-", StringComparison.Ordinal)));

    private async Task<Visit> OpenAsync(string query, string? device = null, ColorScheme shade = ColorScheme.Light)
    {
        var visit = await Visit.StartAsync(device, shade);
        await visit.Page.GotoAsync(app.Urls.First() + "/" + query);
        await visit.Page.WaitForSelectorAsync("body[data-ready]");
        await visit.Page.WaitForSelectorAsync(".walk-keys button");
        return visit;
    }
}
