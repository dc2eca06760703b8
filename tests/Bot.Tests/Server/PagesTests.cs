using System.Net;

namespace DxAssistant.Bot.Tests.Server;

public sealed class PagesTests
{
    [Theory]
    [InlineData("/")]
    [InlineData("/cases")]
    [InlineData("/device")]
    [InlineData("/case/abc")]
    [InlineData("/case/abc/sheet")]
    public async Task Get_Page_IsHtmlWithAStrictPolicy(string path)
    {
        await using var server = await RunningServer.StartAsync();

        using var response = await server.Http.GetAsync(path);
        string policy = response.Headers.GetValues("Content-Security-Policy").Single();

        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
        Assert.Equal("text/html", response.Content.Headers.ContentType!.MediaType);
        Assert.Contains("default-src 'none'", policy, StringComparison.Ordinal);
        // The engine may be compiled; no text may be run as a program.
        Assert.DoesNotContain("'unsafe", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("'wasm-unsafe-eval'",
            policy.Replace("script-src 'self' 'wasm-unsafe-eval';", "", StringComparison.Ordinal),
            StringComparison.Ordinal);
        Assert.DoesNotContain("http", policy, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/")]
    [InlineData("/case/abc/sheet")]
    [InlineData("/cases")]
    public async Task Get_Page_HasNoScriptOrStyleInline(string path)
    {
        await using var server = await RunningServer.StartAsync();

        string html = await server.Http.GetStringAsync(path);

        Assert.DoesNotContain("style=", html, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("<style", html, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotMatch("(?i)<script(?![^>]*\\bsrc=)", html);
        Assert.DoesNotMatch("(?i)\\son[a-z]+=", html);
        Assert.DoesNotMatch("(?i)(src|href)=\"(https?:)?//", html);
    }

    [Fact]
    public async Task Get_UnderAnotherHostName_IsTurnedAway()
    {
        await using var server = await RunningServer.StartAsync();
        using var request = new HttpRequestMessage(HttpMethod.Get, "/") { Headers = { Host = "rebound.example" } };

        using var response = await server.Http.SendAsync(request);

        Assert.Equal(HttpStatusCode.BadRequest, response.StatusCode);
    }
}
