using Microsoft.Playwright;

namespace DxAssistant.Browser.Tests;

/// <summary>A browser at the site, on one kind of device.</summary>
internal sealed class Visit : IAsyncDisposable
{
    private readonly IPlaywright playwright;
    private readonly IBrowser browser;

    private Visit(IPlaywright playwright, IBrowser browser, IBrowserContext context, IPage page)
    {
        this.playwright = playwright;
        this.browser = browser;
        Context = context;
        Page = page;
        page.Console += (_, message) => { if (message.Type == "error") Errors.Add(message.Text); };
        page.PageError += (_, error) => Errors.Add(error);
    }

    public IBrowserContext Context { get; }

    public IPage Page { get; }

    /// <summary>What the browser complained of, such as a breach of the content policy.</summary>
    public List<string> Errors { get; } = [];

    /// <param name="device">A device Playwright knows, such as <c>Pixel 7</c>; null for a desk with a window of 1280 by
    /// 800.</param>
    // For a busy machine: a test that waits in vain fails all the same, only later. Milliseconds.
    private const float Patience = 90_000;

    public static async Task<Visit> StartAsync(
        string? device = null, ColorScheme shade = ColorScheme.Light, int width = 1280, int height = 800)
    {
        var playwright = await Playwright.CreateAsync();
        var browser = await Chromium.StartAsync(playwright);
        var options = device is null
            ? new BrowserNewContextOptions { ViewportSize = new() { Width = width, Height = height } }
            : playwright.Devices[device];
        options.ColorScheme = shade;
        options.ReducedMotion = ReducedMotion.Reduce;
        var context = await browser.NewContextAsync(options);
        context.SetDefaultTimeout(Patience);
        return new Visit(playwright, browser, context, await context.NewPageAsync());
    }

    public async Task OpenAsync(string address)
    {
        await Page.GotoAsync(address);
        await Page.WaitForSelectorAsync("body[data-ready=yes]");
    }

    public Task TapAsync(string label) =>
        AnswerAsync(() => Page.GetByRole(AriaRole.Button, new() { Name = label, Exact = true }).ClickAsync());

    public Task WriteAsync(string words) => AnswerAsync(async () =>
    {
        await Page.FillAsync("#words", words);
        await Page.PressAsync("#words", "Enter");
    });

    /// <summary>Does something that answers the open question, and waits until the next one is there.</summary>
    public async Task AnswerAsync(Func<Task> act)
    {
        int written = await Page.Locator(".exchange").CountAsync();
        await act();
        await Page.WaitForFunctionAsync(
            "n => document.querySelectorAll('.exchange').length > n && !document.querySelector('.slip.busy')", written);
    }

    /// <summary>Keeps a picture in the folder that <c>DX_PICTURES</c> names; does nothing without it.</summary>
    public async Task PictureAsync(string name, bool whole = false)
    {
        if (Environment.GetEnvironmentVariable("DX_PICTURES") is not { } folder) return;
        await Page.ScreenshotAsync(new() { Path = Path.Combine(folder, name + ".png"), FullPage = whole });
    }

    public async ValueTask DisposeAsync()
    {
        await browser.DisposeAsync();
        playwright.Dispose();
    }
}
