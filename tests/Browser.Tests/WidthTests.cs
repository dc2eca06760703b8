using Microsoft.Playwright;

namespace DxAssistant.Browser.Tests;

/// <summary>Nothing sticks out, at any width, at any size of text, on a phone on its side.</summary>
public sealed class WidthTests
{
    // 1.4.10 Reflow: 320 CSS pixels without scrolling sideways.
    [ChromiumTheory]
    [InlineData(320, 568)]
    [InlineData(412, 839)]
    [InlineData(768, 1024)]
    [InlineData(1280, 800)]
    [InlineData(3840, 2160)]
    public async Task Width_NothingSticksOut(int width, int height)
    {
        await using var site = await Site.StartAsync();
        await using var visit = await Visit.StartAsync(width: width, height: height);
        await visit.WalkToReadingsAsync(site);
        await visit.PictureAsync($"width-{width}");

        Assert.True(await visit.Page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"));
    }

    // 1.4.4 Resize text: the reader's own setting doubled.
    [ChromiumFact]
    public async Task Text_AtTwiceTheSize_NothingSticksOutAndEverythingCanBeReached()
    {
        await using var site = await Site.StartAsync();
        await using var visit = await Visit.StartAsync("Pixel 7");
        await visit.WalkToReadingsAsync(site);
        await visit.Page.AddStyleTagAsync(new() { Url = "/css/ink.css" });
        await visit.Page.EvaluateAsync("document.documentElement.style.fontSize = '200%'");
        await visit.PictureAsync("text-twice");
        Assert.Equal(1,
            await visit.Page.EvaluateAsync<int>(
                "getComputedStyle(document.querySelector('.row')).gridTemplateColumns.split(' ').length"));

        Assert.True(await visit.Page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= innerWidth"));
        await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Cannot do that here" })
            .ScrollIntoViewIfNeededAsync();
        Assert.True(
            await visit.Page.GetByRole(AriaRole.Button, new() { Name = "Cannot do that here" }).IsVisibleAsync());
    }

    // Both of the above, on every page that a technician or the desk opens.
    [ChromiumTheory]
    [InlineData(320, "100%")]
    [InlineData(360, "200%")]
    public async Task Page_Narrow_NothingSticksOut(int width, string text)
    {
        await using var site = await Site.StartAsync();
        await using var visit = await Visit.StartAsync(width: width, height: 640);
        await visit.WalkToReadingsAsync(site);
        string sheet = new Uri(visit.Page.Url).AbsolutePath;
        string[] pages = [sheet, $"{sheet}/job", $"{sheet}/sheet", $"{sheet}/call", "/cases", "/work", "/claims",
            "/device", "/join", "/sign-in"];
        foreach (string path in pages)
        {
            await visit.OpenAsync(site.Address + path);
            await visit.Page.EvaluateAsync("size => document.documentElement.style.fontSize = size", text);
            await visit.PictureAsync($"narrow-{width}-{path.Split('/')[^1]}", whole: true);

            int over = await visit.Page.EvaluateAsync<int>("document.documentElement.scrollWidth - innerWidth");
            Assert.True(over <= 0, $"{path} sticks out by {over} pixels");
        }
    }

    // On its side a phone is too low for question and sheet one above the other.
    [ChromiumFact]
    public async Task Phone_OnItsSide_QuestionAndAnswersStandBesideTheSheet()
    {
        await using var site = await Site.StartAsync();
        await using var visit = await Visit.StartAsync(width: 640, height: 360);
        await visit.OpenAsync(site.Address);
        await visit.WriteAsync("compressor does not start");

        var question = await BoxAsync(visit, "#slip-question");
        var sheet = await BoxAsync(visit, ".sheet");
        var answer = await BoxAsync(visit, "[data-key=done]");

        await visit.LookAsync("sheet-on-its-side");
        Assert.True(question.X >= sheet.X + sheet.Width, "the question stands beside the sheet");
        Assert.InRange(question.Y, 0, 360 - question.Height);
        Assert.InRange(answer.Y, 0, 360);
    }

    private static async Task<LocatorBoundingBoxResult> BoxAsync(Visit visit, string selector) =>
        (await visit.Page.Locator(selector).BoundingBoxAsync())!;
}
