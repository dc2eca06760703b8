using Microsoft.Playwright;

namespace DxAssistant.Browser.Tests;

/// <summary>A page of the browser on which pictures are made smaller and laid beside each other.</summary>
internal static class PictureBench
{
    private const string Tools = """
        const open = async (kind, base64) => {
          const image = new Image();
          image.src = `data:image/${kind};base64,${base64}`;
          await image.decode();
          return image;
        };
        const draw = (image, width, height, lower = 0) => {
          const canvas = new OffscreenCanvas(width, height);
          const paper = canvas.getContext('2d', { willReadFrequently: true });
          paper.imageSmoothingQuality = 'high';
          paper.drawImage(image, 0, lower, width, height);
          return canvas;
        };
        const base64 = async blob => new Promise(done => {
          const reader = new FileReader();
          reader.onload = () => done(reader.result.split(',')[1]);
          reader.readAsDataURL(blob);
        });
        const small = async (png, share) => {
          const image = await open('png', png);
          const canvas = draw(image, Math.round(image.width * share), Math.round(image.height * share));
          return base64(await canvas.convertToBlob({ type: 'image/webp', quality: 0.5 }));
        };
        // Cells of the picture, each as dark as it is on average: what a font's edges do is lost in them.
        const cells = (image, across, down, lower = 0) => {
          const { data } = draw(image, across, down, lower).getContext('2d').getImageData(0, 0, across, down);
          return Array.from({ length: across * down }, (_, i) => [0.3 * data[4 * i] + 0.59 * data[4 * i + 1] + 0.11 * data[4 * i + 2], data[4 * i] - data[4 * i + 2]]);
        };
        const apart = async (webp, png, share) => {
          const [kept, now] = [await open('webp', webp), await open('png', png)];
          const across = Math.round(kept.width / 8);
          const down = Math.round(now.height * share / 8);
          const one = cells(kept, across, Math.round(kept.height / 8));
          // What moved up or down by a cell or a part of one, as after scrolling, is the same.
          const others = [0, -0.25, 0.25, -0.5, 0.5].map(lower => cells(now, across, down, lower));
          const alike = ([light, hue], there) => there && Math.abs(light - there[0]) < 28 && Math.abs(hue - there[1]) < 40;
          const same = one.filter((cell, i) => [i, i - across, i + across].some(place => others.some(other => alike(cell, other[place])))).length;
          return 1 - same / Math.max(one.length, others[0].length);
        };
        const ownFaces = () => {
          const paper = new OffscreenCanvas(1, 1).getContext('2d');
          const width = face => { paper.font = `20px ${face}`; return paper.measureText('Line 12, isolated and proven dead').width; };
          return width('Seravek, "Gill Sans Nova", Ubuntu, Calibri, "DejaVu Sans", sans-serif') === width('"DejaVu Sans"');
        };
        """;

    private static readonly Lazy<Task<IPage>> Bench = new(OpenAsync);

    /// <summary>A WebP picture, in base64, made from a screenshot.</summary>
    /// <param name="share">How wide it is, of the width of the screenshot; over 0 to 1.</param>
    public static Task<string> ShrinkAsync(byte[] png, double share) =>
        RunAsync<string>("([png, share]) => small(png, share)", Convert.ToBase64String(png), share);

    /// <summary>How much of two pictures differs: 0 for none, 1 for all.</summary>
    /// <param name="share">How wide the kept picture is, of the width of the screenshot.</param>
    public static Task<double> CompareAsync(byte[] keptWebp, byte[] png, double share) =>
        RunAsync<double>("([webp, png, share]) => apart(webp, png, share)", Convert.ToBase64String(keptWebp),
            Convert.ToBase64String(png), share);

    /// <summary>Whether this machine writes with the faces that the kept pictures are written with.</summary>
    public static Task<bool> WritesAlikeAsync() => RunAsync<bool>("() => ownFaces()");

    private static async Task<T> RunAsync<T>(string what, params object[] given) =>
        await (await Bench.Value).EvaluateAsync<T>(what, given);

    private static async Task<IPage> OpenAsync()
    {
        var (_, browser) = await Chromium.RunningAsync();
        var page = await (await browser.NewContextAsync()).NewPageAsync();
        await page.AddScriptTagAsync(new() { Content = Tools });
        return page;
    }
}
