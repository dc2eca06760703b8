using System.Net;
using System.Text;

namespace DxAssistant.Bot.Tests.Server;

public sealed class SameOriginTests
{
    // A body of text/plain or none needs no leave from this program: the browser just sends it.
    [Theory]
    [InlineData("Origin", "https://elsewhere.example")]
    [InlineData("Origin", "http://localhost:1")]
    [InlineData("Origin", "null")]
    [InlineData("Sec-Fetch-Site", "cross-site")]
    [InlineData("Sec-Fetch-Site", "same-site")]
    public async Task Post_FromAPageElsewhere_IsTurnedAway(string header, string value)
    {
        await using var server = await RunningServer.StartAsync();

        foreach (string path in new[] { "/api/cases", "/api/cases/a/turns", "/api/messages" })
            Assert.Equal(HttpStatusCode.Forbidden, await SendAsync(server, HttpMethod.Post, path, header, value));
    }

    [Theory]
    [InlineData("Origin", "OWN")]
    [InlineData("Sec-Fetch-Site", "same-origin")]
    [InlineData("Accept", "*/*")]
    public async Task Post_FromAPageOfThisProgramOrNone_IsTaken(string header, string value)
    {
        await using var server = await RunningServer.StartAsync();
        string own = server.Http.BaseAddress!.GetLeftPart(UriPartial.Authority);

        var status = await SendAsync(
            server, HttpMethod.Post, "/api/cases", header, value.Replace("OWN", own, StringComparison.Ordinal));

        Assert.Equal(HttpStatusCode.Created, status);
    }

    // A link on another page may lead here.
    [Fact]
    public async Task Get_FromAPageElsewhere_IsShown()
    {
        await using var server = await RunningServer.StartAsync();

        Assert.Equal(
            HttpStatusCode.OK, await SendAsync(server, HttpMethod.Get, "/cases", "Sec-Fetch-Site", "cross-site"));
    }

    private static async Task<HttpStatusCode> SendAsync(
        RunningServer server, HttpMethod method, string path, string header, string value)
    {
        using var request = new HttpRequestMessage(method, path);
        request.Headers.Add(header, value);
        if (method == HttpMethod.Post) request.Content = new StringContent("", Encoding.UTF8, "text/plain");
        using var response = await server.Http.SendAsync(request);
        return response.StatusCode;
    }
}
