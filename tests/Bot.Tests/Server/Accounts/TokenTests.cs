using System.Net;
using System.Net.Http.Headers;
using System.Net.Http.Json;
using System.Text.Json;

namespace DxAssistant.Bot.Tests.Server.Accounts;

/// <summary>What other programs may do with a token.</summary>
public sealed class TokenTests
{
    [Fact]
    public async Task Token_ThatMayRead_ReadsAndDoesNotWrite()
    {
        await using var company = await Company.StartAsync();
        string id = await Company.OpenCaseAsync(await company.BrowserOfAsync("tom"));
        var (program, _) = await ProgramAsync(company, "read-cases");

        Assert.Equal(HttpStatusCode.OK, await Company.StatusAsync(program, $"/api/cases/{id}"));
        using var turn = await program.PostAsJsonAsync($"/api/cases/{id}/turns", new { turnId = "t1", text = "b4" });
        Assert.Equal(HttpStatusCode.Forbidden, turn.StatusCode);
        Assert.Equal(HttpStatusCode.Forbidden, await Company.StatusAsync(program, "/api/accounts"));
    }

    [Fact]
    public async Task Token_Revoked_IsNoGoodAtOnce()
    {
        await using var company = await Company.StartAsync();
        var (program, id) = await ProgramAsync(company, "read-cases");
        using var ended = await (await company.BrowserOfAsync("ada")).DeleteAsync($"/api/tokens/{id}");

        Assert.Equal(HttpStatusCode.NoContent, ended.StatusCode);
        Assert.Equal(HttpStatusCode.Unauthorized, await Company.StatusAsync(program, "/api/cases"));
    }

    [Theory]
    [InlineData("Bearer dxa-made-up")]
    [InlineData("Bearer ")]
    [InlineData("Basic dG9tOnRvbQ==")]
    public async Task Token_MadeUp_IsNoGood(string header)
    {
        await using var company = await Company.StartAsync();
        var program = company.Browser();
        program.DefaultRequestHeaders.TryAddWithoutValidation("Authorization", header);

        Assert.Equal(HttpStatusCode.Unauthorized, await Company.StatusAsync(program, "/api/cases"));
    }

    [Fact]
    public async Task Token_List_NeverShowsTheSecret()
    {
        await using var company = await Company.StartAsync();
        var (program, _) = await ProgramAsync(company, "read-cases");
        string secret = program.DefaultRequestHeaders.Authorization!.Parameter!;

        string list = await (await company.BrowserOfAsync("ada")).GetStringAsync("/api/tokens");

        Assert.DoesNotContain(secret, list, StringComparison.Ordinal);
        Assert.Null(JsonDocument.Parse(list).RootElement[0].TryGetProperty("secret", out var shown)
            ? shown.GetString()
            : null);
    }

    [Theory]
    [InlineData(true, HttpStatusCode.OK)]
    [InlineData(false, HttpStatusCode.Unauthorized)]
    public async Task Channel_WithAccounts_NeedsATokenForIt(bool withToken, HttpStatusCode expected)
    {
        await using var company = await Company.StartAsync();
        var channel = withToken ? (await ProgramAsync(company, "channel")).Program : company.Browser();

        using var answer = await channel.PostAsJsonAsync("/api/messages", new
        {
            type = "message", id = "m1", text = "x", channelId = "test", serviceUrl = "http://localhost:1/",
            deliveryMode = "expectReplies", conversation = new { id = "c" }, from = new { id = "p" },
            recipient = new { id = "bot" },
        });

        Assert.Equal(expected, answer.StatusCode);
    }

    [Theory]
    [InlineData("/api/tokens", """{"label":"van stock","scopes":["read-cases",null]}""")]
    [InlineData("/api/accounts",
        """{"name":"eve","password":"a long one that nobody guesses","roles":["desk",null]}""")]
    public async Task Post_ListHoldsNull_IsNotTaken(string address, string body)
    {
        await using var company = await Company.StartAsync();
        using var json = new StringContent(body, System.Text.Encoding.UTF8, "application/json");

        using var answer = await (await company.BrowserOfAsync("ada")).PostAsync(address, json);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, answer.StatusCode);
        Assert.Contains("null is not", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    private static async Task<(HttpClient Program, string Id)> ProgramAsync(Company company, string scope)
    {
        var ada = await company.BrowserOfAsync("ada");
        using var made =
            await ada.PostAsJsonAsync("/api/tokens", new { label = "van stock", scopes = new[] { scope } });
        Assert.Equal(HttpStatusCode.Created, made.StatusCode);
        var token = await made.Content.ReadFromJsonAsync<JsonElement>();
        var program = company.Browser();
        program.DefaultRequestHeaders.Authorization =
            new AuthenticationHeaderValue("Bearer", token.GetProperty("secret").GetString());
        return (program, token.GetProperty("id").GetString()!);
    }
}
