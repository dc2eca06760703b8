using Deque.AxeCore.Playwright;
using DxAssistant.Server.Serving;

namespace DxAssistant.Browser.Tests;

/// <summary>A whole walk over the shipped pages, answered by what the page offers: from the first words to the closed
/// case.</summary>
public sealed class ShippedContentTests
{
    private const int MostTurns = 120;

    [ChromiumTheory]
    [InlineData("Pixel 7")]
    [InlineData(null)]
    public async Task Walk_OverTheShippedPages_ReachesTheEndAndStaysAccessible(string? device)
    {
        using var notes = new StringWriter();
        using var content = LiveContent.Open(ContentPlace.Find()!, notes)
            ?? throw new InvalidOperationException(notes.ToString());
        await using var site = await Site.StartAsync(() => content.Current);
        await using var visit = await Visit.StartAsync(device);
        await visit.OpenAsync(site.Address);
        var kinds = new HashSet<string>();

        string kind = await KindAsync(visit);
        for (int turn = 0; kind != "closed" && turn < MostTurns; turn++)
        {
            await visit.PictureAsync($"shipped-{device ?? "desk"}-{turn:00}-{kind}".Replace(' ', '-'));
            if (kinds.Add(kind)) await CheckAsync(visit, kind);
            await AnswerAsync(visit, kind);
            kind = await KindAsync(visit);
        }

        await visit.PictureAsync($"shipped-{device ?? "desk"}-end".Replace(' ', '-'), whole: true);
        Assert.Equal("closed", kind);
        Assert.Contains("check", kinds);
        Assert.Empty(visit.Errors);
        await visit.Page.GotoAsync(visit.Page.Url + "/sheet");
        await visit.Page.WaitForSelectorAsync(".summary h2");
        await visit.PictureAsync($"shipped-{device ?? "desk"}-summary".Replace(' ', '-'), whole: true);
        await CheckAsync(visit, "summary");
    }

    // A plug that is off is seen, pressed home and tried: the shortest way to a case that is closed with a cure.
    [ChromiumFact]
    public async Task Walk_CompressorPlugIsOff_IsFoundRepairedAndOnTheSummary()
    {
        using var notes = new StringWriter();
        using var content = LiveContent.Open(ContentPlace.Find()!, notes)
            ?? throw new InvalidOperationException(notes.ToString());
        await using var site = await Site.StartAsync(() => content.Current);
        await using var visit = await Visit.StartAsync("Pixel 7");
        await visit.OpenAsync(site.Address);

        string kind = await KindAsync(visit);
        for (int turn = 0; kind != "closed" && turn < MostTurns; turn++)
        {
            await visit.PictureAsync($"plug-{turn:00}-{kind}");
            await AnswerAsync(visit, kind);
            kind = await KindAsync(visit);
        }

        await visit.PictureAsync("plug-end");
        await visit.Page.GotoAsync(visit.Page.Url + "/sheet");
        await visit.Page.WaitForSelectorAsync(".summary h2");
        await visit.PictureAsync("plug-summary", whole: true);
        string summary = await visit.Page.InnerTextAsync(".summary");
        Assert.Contains("Compressor plug or lead loose", summary, StringComparison.Ordinal);
        Assert.Contains("the unit works", summary, StringComparison.Ordinal);
    }

    private static async Task<string> KindAsync(Visit visit) =>
        (await visit.Page.GetAttributeAsync("#slip", "data-kind"))!;

    private static Task AnswerAsync(Visit visit, string kind) => kind switch
    {
        "complaint" => visit.WriteAsync("compressor won't start"),
        "role" => visit.AnswerAsync(() => visit.Page.ClickAsync("[data-key=technician]")),
        "series" => visit.AnswerAsync(() => visit.Page.ClickAsync("[data-key=brenholt-ws]")),
        _ => GiveAsync(visit),
    };

    // A dead circuit reads 0; everything else is tapped.
    private static Task GiveAsync(Visit visit) => visit.AnswerAsync(async () =>
    {
        bool taps = await visit.Page.Locator(".option").CountAsync() > 0;
        if (!taps)
        {
            foreach (var input in await visit.Page.Locator(".reading-input").AllAsync()) await input.FillAsync("0");
            await visit.Page.ClickAsync(".main");
            return;
        }

        if (await visit.Page.Locator(".instead").CountAsync() > 0)
            await visit.Page.EvaluateAsync("() => { document.querySelector('.instead').open = true; }");
        var loose = visit.Page.Locator(".option", new() { HasTextRegex = new("loose, off") });
        await (await loose.CountAsync() > 0 ? loose : visit.Page.Locator(".option")).First.ClickAsync();
    });

    private static async Task CheckAsync(Visit visit, string where)
    {
        var result = await visit.Page.RunAxe();
        Assert.True(
            result.Violations.Length == 0, where + ": "
            + string.Join("\n", result.Violations.Select(v => $"{v.Id}: {v.Nodes[0].Html}")));
    }
}
