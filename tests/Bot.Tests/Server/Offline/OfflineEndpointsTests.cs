using System.Net;
using DxAssistant.Server.Offline;

namespace DxAssistant.Bot.Tests.Server.Offline;

public sealed class OfflineEndpointsTests
{
    [Fact]
    public async Task Kit_CoreWithoutPages_OffersNoPack()
    {
        await using var server = await RunningServer.StartAsync();

        var (status, kit) = await server.GetAsync("/offline/kit");

        Assert.Equal(HttpStatusCode.OK, status);
        Assert.False(kit.TryGetProperty("pack", out _));
    }

    [Theory]
    [InlineData("/offline/pages/0123456789abcdef/pack")]
    [InlineData("/offline/engine/0123456789abcdef/dotnet.js")]
    public async Task Get_AnotherVersion_IsNotThere(string path)
    {
        await using var server = await RunningServer.StartAsync();

        var (status, json) = await server.GetAsync(path);

        Assert.Equal(HttpStatusCode.NotFound, status);
        Assert.Contains("not here any more", json.GetProperty("detail").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Engine_FileChanged_IsAnotherVersion()
    {
        string folder = Directory.CreateTempSubdirectory("engine").FullName;
        File.WriteAllText(Path.Combine(folder, "dotnet.js"), "one");
        File.WriteAllText(Path.Combine(folder, "dotnet.js.br"), "b");
        var before = EngineFolder.Open(folder)!;
        File.WriteAllText(Path.Combine(folder, "dotnet.js"), "two");

        Assert.NotEqual(before.Version, EngineFolder.Open(folder)!.Version);
        Assert.Equal("dotnet.js", Assert.Single(before.Files));
        Assert.Equal((Path.Combine(folder, "dotnet.js.br"), true), before.Locate("dotnet.js", brotli: true));
        Assert.Equal((Path.Combine(folder, "dotnet.js"), false), before.Locate("dotnet.js", brotli: false));
        Assert.Null(before.Locate("../secret", brotli: false));
        Directory.Delete(folder, recursive: true);
    }
}
