using System.Net;
using System.Net.Http.Json;
using DxAssistant.Server.Accounts;

namespace DxAssistant.Bot.Tests.Server.Accounts;

/// <summary>Each address has its door, and each door lets through whom it should.</summary>
public sealed class DoorTests
{
    [Fact]
    public async Task Doors_EveryAddress_HasOneOfItsOwn()
    {
        await using var server = await RunningServer.StartAsync();

        var without = server.Endpoints.Select(e => "/" + e.RoutePattern.RawText!.TrimStart('/'))
            .Where(path => !Doors.All.Any(door => door.StandsBefore(path)));

        Assert.Empty(without);
    }

    [Theory]
    [InlineData("/api/cases", null, HttpStatusCode.Unauthorized)]
    [InlineData("/api/accounts", null, HttpStatusCode.Unauthorized)]
    [InlineData("/api/unheard-of", null, HttpStatusCode.Unauthorized)]
    [InlineData("/cases", null, HttpStatusCode.Redirect)]
    [InlineData("/sign-in", null, HttpStatusCode.OK)]
    [InlineData("/css/ink.css", null, HttpStatusCode.OK)]
    [InlineData("/api/health/ready", null, HttpStatusCode.OK)]
    [InlineData("/api/cases", "tom", HttpStatusCode.OK)]
    [InlineData("/API/ACCOUNTS", "tom", HttpStatusCode.Forbidden)]
    [InlineData("/api/accounts", "dora", HttpStatusCode.Forbidden)]
    [InlineData("/api/audit", "dora", HttpStatusCode.Forbidden)]
    [InlineData("/api/cases", "aron", HttpStatusCode.Forbidden)]
    [InlineData("/api/cases", "ada", HttpStatusCode.OK)]
    [InlineData("/api/accounts", "ada", HttpStatusCode.OK)]
    public async Task Get_Address_AnswersByRole(string path, string? name, HttpStatusCode expected)
    {
        await using var company = await Company.StartAsync();
        var browser = name is null ? company.Browser() : await company.BrowserOfAsync(name);

        Assert.Equal(expected, await Company.StatusAsync(browser, path));
    }

    [Theory]
    [InlineData("/accounts", "text/html,*/*;q=0.8", "text/html")]
    [InlineData("/accounts", "*/*", "application/problem+json")]
    [InlineData("/api/accounts", "text/html", "application/problem+json")]
    public async Task Get_AddressForOthers_IsRefusedInAFormForWhoeverAsks(string path, string accepted, string form)
    {
        await using var company = await Company.StartAsync();
        using var request = new HttpRequestMessage(HttpMethod.Get, new Uri(path, UriKind.Relative));
        request.Headers.TryAddWithoutValidation("Accept", accepted);
        using var answer = await (await company.BrowserOfAsync("tom")).SendAsync(request);

        Assert.Equal((HttpStatusCode.Forbidden, form),
            (answer.StatusCode, answer.Content.Headers.ContentType!.MediaType));
        Assert.Contains("Ask whoever keeps the accounts.", await answer.Content.ReadAsStringAsync(),
            StringComparison.Ordinal);
    }

    [Fact]
    public async Task Case_OfAnotherTechnician_IsAsIfItWereNotThere()
    {
        await using var company = await Company.StartAsync();
        string id = await Company.OpenCaseAsync(await company.BrowserOfAsync("tom"));
        var other = await company.BrowserOfAsync("tilda");

        foreach (string path in new[] { "", "/summary", "/picture" })
            Assert.Equal(HttpStatusCode.NotFound, await Company.StatusAsync(other, $"/api/cases/{id}{path}"));
        using var turn = await other.PostAsJsonAsync($"/api/cases/{id}/turns", new { turnId = "t1", text = "b4" });
        Assert.Equal(HttpStatusCode.NotFound, turn.StatusCode);
        Assert.Equal("[]", await other.GetStringAsync("/api/cases"));
    }

    [Fact]
    public async Task Case_OfATechnician_IsSeenByThemAndTheDesk_AndThatIsWrittenDown()
    {
        await using var company = await Company.StartAsync();
        var tom = await company.BrowserOfAsync("tom");
        string id = await Company.OpenCaseAsync(tom);
        using var turn = await tom.PostAsJsonAsync($"/api/cases/{id}/turns", new { turnId = "t1", text = "b4" });

        Assert.Contains("\"by\":\"tom\"", await turn.Content.ReadAsStringAsync(), StringComparison.Ordinal);
        Assert.Contains(id, await tom.GetStringAsync("/api/cases"), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.OK,
            await Company.StatusAsync(await company.BrowserOfAsync("dora"), $"/api/cases/{id}"));
        Assert.Contains(company.Book.Audit(10), line => line is { Who: "dora", Did: "saw case" } && line.To == id);
    }

    [Fact]
    public async Task Refused_AddressOrCase_LeavesALine()
    {
        await using var company = await Company.StartAsync();
        string id = await Company.OpenCaseAsync(await company.BrowserOfAsync("tom"));
        var other = await company.BrowserOfAsync("tilda");

        await Company.StatusAsync(other, "/api/accounts");
        await Company.StatusAsync(other, $"/api/cases/{id}");

        var lines = company.Book.Audit(2);
        Assert.Equal(("tilda", "was refused case", id), (lines[0].Who, lines[0].Did, lines[0].To));
        Assert.Equal(("tilda", "was refused", "GET /api/accounts"), (lines[1].Who, lines[1].Did, lines[1].To));
    }

    [Fact]
    public async Task Everything_WithoutAccounts_IsForWhoeverIsAtThisMachine()
    {
        await using var server = await RunningServer.StartAsync();

        foreach (string path in new[] { "/", "/cases", "/api/cases", "/api/accounts" })
            Assert.Equal(HttpStatusCode.OK, await Company.StatusAsync(server.Http, path));
    }
}
