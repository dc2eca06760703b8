using System.Globalization;
using Xunit.Abstractions;

namespace DxAssistant.Browser.Tests;

/// <summary>
/// The pages as a phone on a slow line loads them. How fast depends on what else the machine does, and is told, not
/// asserted; what everybody can use and what browsers advise does not. It runs by itself, or it would measure the other
/// tests.
/// </summary>
[CollectionDefinition(Alone, DisableParallelization = true)]
[Collection(Alone)]
public sealed class MeasureTests(ITestOutputHelper output)
{
    private const string Alone = "alone";

    private static readonly string[] Paths = ["/", "/sign-in"];

    [PageToolFact]
    public async Task Pages_OnAPhone_CanBeUsedByAllAndFollowGoodPractice()
    {
        await using var site = await Site.StartAsync();
        string chromium = Chromium.WindowedPath ?? throw new InvalidOperationException("install the package chromium");

        var (exit, said) =
            await PageTools.RunAsync("measure.mjs", [chromium, .. Paths.Select(path => site.Address + path)]);

        output.WriteLine(said);
        Assert.True(exit == 0, said);
        var lines = said.Split('\n').Where(line => line.StartsWith('/')).Select(line => line.Split(' ')).ToList();
        Assert.Equal(Paths, lines.Select(line => line[0]));
        Assert.All(lines, line => Assert.Equal((100, 100), (Number(line[2]), Number(line[3]))));
    }

    private static int Number(string text) => int.Parse(text, CultureInfo.InvariantCulture);
}
