using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace DxAssistant.Browser.Tests;

/// <summary>Looks a screen through: everybody can use it, nothing sticks out, and it looks as it did when a person last
/// looked at it.</summary>
/// <remarks>The pictures in <c>Pictures/</c> are written anew by <c>DX_UPDATE=1</c>, and looked at before they are
/// committed.</remarks>
internal static class Look
{
    // A cell counts as different only where its darkness or hue moved; a line that wraps elsewhere moves a few of them.
    private const double MostApart = 0.04;
    private const int Tallest = 1900;

    // What is another one at each visit.
    private const string Passing =
        "time, .frame-number, .passing { visibility: hidden !important } * { caret-color: transparent !important }";

    private const string Hide = """
        css => {
          const sheet = new CSSStyleSheet();
          sheet.replaceSync(css);
          document.adoptedStyleSheets = [sheet];
          return Math.max(innerHeight, document.documentElement.scrollHeight);
        }
        """;

    /// <summary>Where the pictures are kept.</summary>
    public static readonly string Folder = Path.Combine(PageTools.Folder, "..", "Browser.Tests", "Pictures");

    /// <summary>Whether they are to be written anew.</summary>
    public static readonly bool Updates = Environment.GetEnvironmentVariable("DX_UPDATE") == "1";

    /// <param name="name">What the screen is called; the device and the shade are added.</param>
    /// <param name="passing">What of it is another one at each visit, as a selector.</param>
    public static async Task ThroughAsync(Visit visit, string name, string? passing = null)
    {
        await UsableAsync(visit, name);
        await AsBeforeAsync(visit, $"{name}-{visit.Name}", passing);
    }

    /// <summary>Everybody can use it, and nothing sticks out sideways.</summary>
    public static async Task UsableAsync(Visit visit, string name)
    {
        await AccessibleAsync(visit, name);
        int over = await visit.Page.EvaluateAsync<int>("document.documentElement.scrollWidth - innerWidth");
        Assert.True(over <= 0, $"{name} sticks out by {over} pixels");
    }

    /// <summary>Source of the criteria: WCAG 2.2, level AA, as far as a program can tell.</summary>
    public static async Task AccessibleAsync(Visit visit, string name)
    {
        var result = await visit.Page.RunAxe();
        Assert.True(result.Violations.Length == 0,
            name + ": " + string.Join("\n", result.Violations.Select(v => $"{v.Id}: {v.Help}: {v.Nodes[0].Html}")));
    }

    /// <summary>Compares what is seen with the kept picture.</summary>
    public static async Task AsBeforeAsync(Visit visit, string name, string? passing = null)
    {
        byte[] seen = await TakeAsync(visit, passing);
        string file = Path.Combine(Folder, name + ".webp");
        if (Updates)
            await File.WriteAllBytesAsync(file,
                Convert.FromBase64String(await PictureBench.ShrinkAsync(seen, visit.PictureShare)));
        Assert.True(File.Exists(file), $"no picture {name} is kept: DX_UPDATE=1 writes it");
        if (Updates || !await PictureBench.WritesAlikeAsync()) return;
        double apart = await PictureBench.CompareAsync(await File.ReadAllBytesAsync(file), seen, visit.PictureShare);
        if (apart > MostApart)
            Assert.Fail($"{name} looks another way in {apart:P1} of it; {await KeepAsync(name, seen)}");
    }

    // Of a sheet what is on the screen, where the newest lines are; of other pages all. The styles are made by a
    // script: the pages take none from elsewhere.
    private static async Task<byte[]> TakeAsync(Visit visit, string? passing)
    {
        int width = visit.Page.ViewportSize!.Width;
        int height = await visit.Page.EvaluateAsync<int>(Hide,
            passing is null ? Passing : $"{Passing} {passing} {{ visibility: hidden !important }}");
        bool isSheet = await visit.Page.Locator(".slip").CountAsync() > 0;
        byte[] seen = await visit.Page.ScreenshotAsync(new()
        {
            FullPage = !isSheet, Scale = ScreenshotScale.Css, Caret = ScreenshotCaret.Initial,
            Clip = isSheet ? null : new() { X = 0, Y = 0, Width = width, Height = Math.Min(height, Tallest) },
        });
        await visit.Page.EvaluateAsync("() => { document.adoptedStyleSheets = []; }");
        return seen;
    }

    private static async Task<string> KeepAsync(string name, byte[] seen)
    {
        string file = Path.Combine(Path.GetTempPath(), $"seen-{name}.png");
        await File.WriteAllBytesAsync(file, seen);
        return "what is seen now lies in " + file;
    }
}
