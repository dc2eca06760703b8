namespace DxAssistant.Browser.Tests;

/// <summary>The page can be put among the apps of a phone, as the browser itself sees it.</summary>
public sealed class InstallTests
{
    [ChromiumFact]
    public async Task Page_WithItsManifest_CanBeInstalled()
    {
        await using var site = await Site.StartAsync();
        await using var visit = await Visit.StartAsync("Pixel 7", kind: BrowserKind.Windowed);
        await visit.OpenAsync(site.Address);
        await visit.Page.WaitForSelectorAsync("body[data-kept=yes]");
        var session = await visit.Context.NewCDPSessionAsync(visit.Page);

        var manifest = (await session.SendAsync("Page.getAppManifest"))!.Value;
        var hindrances = (await session.SendAsync("Page.getInstallabilityErrors"))!.Value.GetProperty(
            "installabilityErrors").EnumerateArray();

        Assert.Equal($"{site.Address}/app.webmanifest", manifest.GetProperty("url").GetString());
        Assert.Empty(manifest.GetProperty("errors").EnumerateArray());
        // The windows of tests are private ones, in which a browser installs nothing.
        Assert.Equal(["in-incognito"], hindrances.Select(each => each.GetProperty("errorId").GetString()!));
    }
}
