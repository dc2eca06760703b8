using Microsoft.Playwright;

namespace DxAssistant.Browser.Tests;

/// <summary>A browser at the site, on one kind of device.</summary>
internal sealed class Visit : IAsyncDisposable
{
    // For a busy machine: a test that waits in vain fails all the same, only later. Milliseconds.
    private const float Patience = 90_000;

    private Visit(IBrowserContext context, IPage page, string name)
    {
        (Context, Name) = (context, name);
        Page = page;
        page.Console += (_, message) => { if (message.Type == "error") Errors.Add(message.Text); };
        page.PageError += (_, error) => Errors.Add(error);
    }

    /// <summary>The device and the shade, as names of pictures bear them.</summary>
    public string Name { get; private set; }

    /// <summary>How wide pictures of this device are kept, of their width.</summary>
    public double PictureShare => Name.StartsWith("desk", StringComparison.Ordinal) ? 0.45 : 0.6;

    public IBrowserContext Context { get; }

    public IPage Page { get; }

    /// <summary>What the browser complained of, such as a breach of the content policy.</summary>
    public List<string> Errors { get; } = [];

    /// <param name="device">A device Playwright knows, such as <c>Pixel 7</c>; null for a desk with a window of 1280 by
    /// 800.</param>
    public static async Task<Visit> StartAsync(
        string? device = null, ColorScheme shade = ColorScheme.Light, int width = 1280, int height = 800,
        BrowserKind kind = BrowserKind.Plain)
    {
        var (playwright, browser) = await Chromium.RunningAsync(kind);
        var options = device is null
            ? new BrowserNewContextOptions { ViewportSize = new() { Width = width, Height = height } }
            : new BrowserNewContextOptions(playwright.Devices[device]);
        options.ColorScheme = shade;
        options.ReducedMotion = ReducedMotion.Reduce;
        var context = await browser.NewContextAsync(options);
        context.SetDefaultTimeout(Patience);
        return new Visit(context, await context.NewPageAsync(),
            $"{(device is null ? "desk" : "phone")}-{shade}".ToLowerInvariant());
    }

    public async Task OpenAsync(string address)
    {
        await Page.GotoAsync(address);
        await ReadyAsync();
    }

    /// <summary>Waits until the page has drawn itself.</summary>
    public Task ReadyAsync() => Page.WaitForSelectorAsync("body[data-ready]:not([data-ready=no])");

    /// <summary>Opens the page and walks to the first question with fields.</summary>
    public async Task WalkToReadingsAsync(Site site)
    {
        await OpenAsync(site.Address);
        await WriteAsync("compressor does not start");
        await TapAsync("Done");
        await TapAsync("Done");
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

    /// <summary>Looks at what is there in both shades.</summary>
    public async Task LookInBothShadesAsync(string name, string? passing = null)
    {
        foreach (var shade in new[] { ColorScheme.Light, ColorScheme.Dark })
        {
            await Page.EmulateMediaAsync(new() { ColorScheme = shade });
            Name = $"{Name.Split('-')[0]}-{shade}".ToLowerInvariant();
            await LookAsync(name, passing);
        }
    }

    /// <summary>Looks the screen through; see <see cref="Look"/>.</summary>
    public Task LookAsync(string name, string? passing = null) => Look.ThroughAsync(this, name, passing);

    /// <summary>Keeps a picture in the folder that <c>DX_PICTURES</c> names; does nothing without it.</summary>
    public async Task PictureAsync(string name, bool whole = false)
    {
        if (Environment.GetEnvironmentVariable("DX_PICTURES") is not { } folder) return;
        await Page.ScreenshotAsync(new()
        {
            Path = Path.Combine(folder, name + ".png"), FullPage = whole, Caret = ScreenshotCaret.Initial,
        });
    }

    public ValueTask DisposeAsync() => Context.DisposeAsync();
}
