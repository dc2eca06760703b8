using DxAssistant.Server.Offline;

namespace DxAssistant.Bot.Tests.Server.Offline;

public sealed class PageKeeperTests
{
    [Fact]
    public void Text_FileChanged_IsAnotherServiceWorker()
    {
        string folder = Directory.CreateTempSubdirectory("pages").FullName;
        Directory.CreateDirectory(Path.Combine(folder, "js", "offline"));
        File.WriteAllText(Path.Combine(folder, "js", "offline", "service-worker.js"), "// worker");
        File.WriteAllText(Path.Combine(folder, "case.html"), "one");
        string before = PageKeeper.Text(folder);
        File.WriteAllText(Path.Combine(folder, "case.html"), "two");

        Assert.NotEqual(before, PageKeeper.Text(folder));
        Assert.Contains("\"/case.html\"", before, StringComparison.Ordinal);
        Assert.DoesNotContain("service-worker.js", before, StringComparison.Ordinal);
        Assert.EndsWith("// worker", before, StringComparison.Ordinal);
        Directory.Delete(folder, recursive: true);
    }

    [Theory]
    [InlineData("/sw.js", "text/javascript")]
    [InlineData("/icons/icon-512.png", "image/png")]
    [InlineData("/app.webmanifest", "application/manifest+json")]
    public async Task Get_WhatAnAppNeeds_IsThere(string path, string type)
    {
        await using var server = await RunningServer.StartAsync();

        using var response = await server.Http.GetAsync(path);

        Assert.True(response.IsSuccessStatusCode);
        Assert.Equal(type, response.Content.Headers.ContentType!.MediaType);
    }
}
