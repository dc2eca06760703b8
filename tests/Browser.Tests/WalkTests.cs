using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace DxAssistant.Browser.Tests;

/// <summary>A whole walk, from the first words to the closed case.</summary>
public sealed class WalkTests
{
    [ChromiumTheory]
    [InlineData("Pixel 7", ColorScheme.Light)]
    [InlineData("Pixel 7", ColorScheme.Dark)]
    [InlineData(null, ColorScheme.Light)]
    [InlineData(null, ColorScheme.Dark)]
    public async Task Walk_WholeCase_EveryStepIsAccessibleAndTheCaseCloses(string? device, ColorScheme shade)
    {
        await using var site = await Site.StartAsync();
        await using var visit = await Visit.StartAsync(device, shade);
        string name = $"{device ?? "desk"}-{shade}".Replace(' ', '-');
        await visit.OpenAsync(site.Address);
        await LookAsync(visit, $"{name}-1-opening");
        await visit.WriteAsync("compressor does not start");
        await LookAsync(visit, $"{name}-2-step");
        await visit.TapAsync("Done");
        await visit.TapAsync("Done");
        await LookAsync(visit, $"{name}-3-windings");
        await FillAsync(visit, "1.2", "1.21", "0.62");
        await visit.TapAsync("Write the readings down");
        await LookAsync(visit, $"{name}-4-found");
        await visit.TapAsync("Repair done");
        await visit.TapAsync("Yes, it works");
        await LookAsync(visit, $"{name}-5-closed");

        Assert.Equal("Do you want to start a new case?", await visit.Page.TextContentAsync("#slip-question"));
        Assert.Empty(visit.Errors);
    }

    private static async Task FillAsync(Visit visit, params string[] readings)
    {
        for (int i = 0; i < readings.Length; i++) await visit.Page.FillAsync($"#reading-{i}", readings[i]);
    }

    private static async Task LookAsync(Visit visit, string name)
    {
        await visit.PictureAsync(name);
        await visit.PictureAsync(name + "-whole", whole: true);
        var result = await visit.Page.RunAxe();
        Assert.True(
            result.Violations.Length == 0,
            string.Join("\n", result.Violations.Select(v => $"{v.Id}: {v.Help}: {v.Nodes[0].Html}")));
    }
}
