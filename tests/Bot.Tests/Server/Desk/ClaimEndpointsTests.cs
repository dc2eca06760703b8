using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using DxAssistant.Bot.Tests.Cases.Claims;
using DxAssistant.Cases;
using DxAssistant.Server.Serving;

namespace DxAssistant.Bot.Tests.Server.Desk;

/// <summary>Claims over HTTP.</summary>
public sealed class ClaimEndpointsTests
{
    [Fact]
    public async Task Claim_BegunDescribedReadiedListedAndGivenOut()
    {
        await using var made = await ClaimedCase.WalkedAsync();
        await using var app = ChatServer.Build(new ServerSettings(IPAddress.Loopback, 0, []), made.Cases,
            () => Shipped.InUse, books: DeskBooks.InMemory() with { Claims = made.Claims });
        await app.StartAsync();
        using var http = new HttpClient { BaseAddress = new Uri(app.Urls.First()) };

        var begun = await SendAsync(http, $"/api/cases/{ClaimedCase.Id}/claims", new { });
        string id = begun.GetProperty("id").GetString()!;
        using var hindered = await http.PostAsJsonAsync($"/api/claims/{id}/acts", new { act = "ready", after = 1 });
        Assert.Equal(HttpStatusCode.UnprocessableEntity, hindered.StatusCode);
        Assert.Contains("serial", await hindered.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        await SendAsync(http, $"/api/claims/{id}/acts",
            new { act = "unit", after = 1, unit = new { serial = "=BW12, \"4711\"", installed = "2029-06-01" } });
        var ready = await SendAsync(http, $"/api/claims/{id}/acts", new { act = "ready", after = 2 });
        using var late = await http.PostAsJsonAsync($"/api/claims/{id}/acts", new { act = "submit", after = 2 });

        Assert.Equal("ready", ready.GetProperty("state").GetString());
        Assert.Equal(HttpStatusCode.Conflict, late.StatusCode);
        var verified = await http.GetFromJsonAsync<JsonElement>(
            $"/api/claims/verify?line={Uri.EscapeDataString(ready.GetProperty("line").GetString()!)}");
        Assert.True(verified.GetProperty("genuine").GetBoolean());
        Assert.Equal(1, (await http.GetFromJsonAsync<JsonElement>("/api/claims?state=ready")).GetArrayLength());
        Assert.Equal(0, (await http.GetFromJsonAsync<JsonElement>("/api/claims?state=approved")).GetArrayLength());
        string[] table = (await http.GetStringAsync("/api/claims.csv")).Split("\r\n");
        Assert.Contains("\"'=BW12, \"\"4711\"\"\"", table[1], StringComparison.Ordinal);
    }

    // As when a port is taken and the next one is tried.
    [Fact]
    public async Task Books_OfAServerThatEnded_ServeTheNextOne()
    {
        await using var made = await ClaimedCase.WalkedAsync();
        var books = DeskBooks.InMemory() with { Claims = made.Claims };
        await using (var ended = ChatServer.Build(new ServerSettings(IPAddress.Loopback, 0, []), made.Cases,
            () => Shipped.InUse, books: books)) await ended.StartAsync();
        await using var app = ChatServer.Build(new ServerSettings(IPAddress.Loopback, 0, []), made.Cases,
            () => Shipped.InUse, books: books);
        await app.StartAsync();
        using var http = new HttpClient { BaseAddress = new Uri(app.Urls.First()) };

        Assert.Equal("[]", await http.GetStringAsync("/api/claims"));
        Assert.Equal("[]", await http.GetStringAsync("/api/calls"));
    }

    [Theory]
    [InlineData("{}")]
    [InlineData("not JSON")]
    [InlineData("""{"act":"pay","after":1}""")]
    public async Task Act_NoAct_SaysWhatToSend(string body)
    {
        await using var server = await RunningServer.StartAsync();
        var (status, json) = await server.PostAsync("/api/claims/abcdefghjkmn/acts", body);
        Assert.Equal(HttpStatusCode.BadRequest, status);
        Assert.Contains("approve", json.GetProperty("detail").GetString(), StringComparison.Ordinal);
    }

    private static async Task<JsonElement> SendAsync(HttpClient http, string path, object body)
    {
        using var response = await http.PostAsJsonAsync(path, body);
        Assert.True(response.IsSuccessStatusCode, await response.Content.ReadAsStringAsync());
        return await response.Content.ReadFromJsonAsync<JsonElement>();
    }
}
