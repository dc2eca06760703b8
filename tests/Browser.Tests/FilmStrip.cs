using Microsoft.Playwright;

namespace DxAssistant.Browser.Tests;

/// <summary>
/// The screens of a walk one beside the other. <c>DX_UPDATE=1</c> writes it to the folder of the kept pictures;
/// otherwise nothing is taken.
/// </summary>
internal sealed class FilmStrip(Visit visit)
{
    // Pixels of one screen on the strip: small, and the question can still be read.
    private const int Width = 206;
    private const int Gap = 8;
    private const int Across = 6;

    private readonly List<string> screens = [];

    /// <summary>Takes the screen as it is.</summary>
    public async Task TakeAsync()
    {
        if (Look.Updates)
            screens.Add(
                Convert.ToBase64String(await visit.Page.ScreenshotAsync(new()
                {
                    Scale = ScreenshotScale.Css, Caret = ScreenshotCaret.Initial,
                })));
    }

    /// <summary>Writes the strip.</summary>
    public async Task KeepAsync(string name)
    {
        if (!Look.Updates) return;
        var strip = await visit.Context.NewPageAsync();
        await strip.SetViewportSizeAsync(Across * (Width + Gap) + Gap, 400);
        await strip.SetContentAsync($"<body style='margin:{Gap}px;display:flex;flex-wrap:wrap;gap:{Gap}px'>"
            + string.Concat(screens.Select(screen => $"<img width={Width} src='data:image/png;base64,{screen}'>")));
        byte[] whole = await strip.ScreenshotAsync(new() { FullPage = true, Scale = ScreenshotScale.Css });
        await strip.CloseAsync();
        await File.WriteAllBytesAsync(Path.Combine(Look.Folder, name + ".webp"),
            Convert.FromBase64String(await PictureBench.ShrinkAsync(whole, 1)));
    }
}
