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
        await visit.OpenAsync(site.Address);
        await visit.LookAsync("sheet-opening");
        await visit.WriteAsync("compressor does not start");
        await visit.LookAsync("sheet-step");
        await visit.TapAsync("Done");
        await visit.TapAsync("Done");
        await visit.LookAsync("sheet-readings");
        await FillAsync(visit, "1.2", "1.21", "0.62");
        await visit.TapAsync("Write the readings down");
        await visit.LookAsync("sheet-found");
        await visit.TapAsync("Repair done");
        await visit.TapAsync("Yes, it works");
        await visit.LookAsync("sheet-closed");

        Assert.Equal("Do you want to start a new case?", await visit.Page.TextContentAsync("#slip-question"));
        Assert.Empty(visit.Errors);
    }

    private static async Task FillAsync(Visit visit, params string[] readings)
    {
        for (int i = 0; i < readings.Length; i++) await visit.Page.FillAsync($"#reading-{i}", readings[i]);
    }
}
