using System.Collections.Immutable;
using System.Net;
using System.Net.Http.Json;
using System.Text;
using System.Text.Json;
using DxAssistant.Bot.Tests.Server.Accounts;
using DxAssistant.Cases.Accounts;

namespace DxAssistant.Bot.Tests.Server.Api;

/// <summary>
/// What holds for the whole API: nothing is made twice, nothing is overwritten unseen, lists come in pages.
/// </summary>
public sealed class ApiRuleTests
{
    private static readonly string[] ReadCases = ["read-cases"];
    private static readonly string[] Desk = ["desk"];

    [Theory]
    [InlineData("", HttpStatusCode.Created)]
    [InlineData(" {}\n", HttpStatusCode.Created)]
    [InlineData("""{"text":"fan dead"}""", HttpStatusCode.BadRequest)]
    [InlineData("[]", HttpStatusCode.BadRequest)]
    [InlineData("b4", HttpStatusCode.BadRequest)]
    public async Task PostCases_BodyItDoesNotUnderstand_IsRefusedAndNothingIsOpened(string body,
        HttpStatusCode expected)
    {
        await using var server = await RunningServer.StartAsync();

        var (status, _) = await server.PostAsync("/api/cases", body);

        Assert.Equal(expected, status);
        Assert.Equal(expected == HttpStatusCode.Created ? 1 : 0, (await server.Store.NamesAsync()).Length);
    }

    [Fact]
    public async Task PostCases_SameKeyAtOnceAndAgain_OpensOne()
    {
        await using var server = await RunningServer.StartAsync();

        var opened = await Task.WhenAll(Enumerable.Range(0, 8).Select(_ => OpenAsync(server.Http, "k1")));
        var other = await OpenAsync(server.Http, "k2");

        Assert.Equal(2, (await server.Store.NamesAsync()).Length);
        Assert.All(opened, answer => Assert.Equal((HttpStatusCode.Created, opened[0].Id), (answer.Status, answer.Id)));
        Assert.NotEqual(opened[0].Id, other.Id);
    }

    [Fact]
    public async Task PostCases_SameKeyOfAnotherPerson_OpensAnother()
    {
        await using var company = await Company.StartAsync();

        var tom = await OpenAsync(await company.BrowserOfAsync("tom"), "k1");
        var tilda = await OpenAsync(await company.BrowserOfAsync("tilda"), "k1");

        Assert.NotEqual(tom.Id, tilda.Id);
    }

    [Theory]
    [InlineData("")]
    [InlineData("k\ty")]
    [InlineData("long")]
    public async Task PostCases_KeyThatIsNone_IsRefused(string key)
    {
        await using var server = await RunningServer.StartAsync();

        var (status, _) = await OpenAsync(server.Http, key == "long" ? new string('k', 201) : key);

        Assert.Equal(HttpStatusCode.BadRequest, status);
    }

    [Fact]
    public async Task PostNotes_SameKey_IsOneNote_OtherWordsAreRefused()
    {
        await using var server = await RunningServer.StartAsync();
        string id = await server.OpenCaseAsync();

        Assert.Equal(HttpStatusCode.OK, await NoteAsync(server.Http, id, "k1", "has no ladder"));
        Assert.Equal(HttpStatusCode.OK, await NoteAsync(server.Http, id, "k1", "has no ladder"));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, await NoteAsync(server.Http, id, "k1", "has a ladder"));

        Assert.Equal(1, (await server.GetAsync($"/api/cases/{id}/call")).Json.GetProperty("notes").GetArrayLength());
    }

    [Fact]
    public async Task PostTokens_SameKey_IsOneToken_OfWhichTheLastSecretIsGood()
    {
        await using var company = await Company.StartAsync();
        var ada = await company.BrowserOfAsync("ada");

        var first = await KeyedAsync(ada, "/api/tokens", "k1", new { label = "dispatch", scopes = ReadCases });
        var second = await KeyedAsync(ada, "/api/tokens", "k1", new { label = "dispatch", scopes = ReadCases });
        var other = await KeyedAsync(ada, "/api/tokens", "k1", new { label = "billing", scopes = ReadCases });

        Assert.Equal((HttpStatusCode.Created, HttpStatusCode.Created, HttpStatusCode.UnprocessableEntity),
            (first.Status, second.Status, other.Status));
        Assert.Equal(first.Json.GetProperty("id").GetString(), Assert.Single(company.Book.Tokens()).Id);
        Assert.Null(company.Book.FindToken(TokenText.HashOf(first.Json.GetProperty("secret").GetString()!)));
        Assert.NotNull(company.Book.FindToken(TokenText.HashOf(second.Json.GetProperty("secret").GetString()!)));

        company.Book.Revoke(first.Json.GetProperty("id").GetString()!);
        Assert.Equal(HttpStatusCode.UnprocessableEntity,
            (await KeyedAsync(ada, "/api/tokens", "k1", new { label = "dispatch", scopes = ReadCases })).Status);
    }

    [Fact]
    public async Task PostAccounts_SameKey_IsOneAccount_WithoutKeyTheNameIsTaken()
    {
        await using var company = await Company.StartAsync();
        var ada = await company.BrowserOfAsync("ada");
        var nina = new { name = "Nina", password = Company.Password, roles = Desk };

        Assert.Equal(HttpStatusCode.NoContent, (await KeyedAsync(ada, "/api/accounts", "k1", nina)).Status);
        Assert.Equal(HttpStatusCode.NoContent, (await KeyedAsync(ada, "/api/accounts", "k1", nina)).Status);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await KeyedAsync(ada, "/api/accounts", "k2", nina)).Status);
        Assert.Equal(HttpStatusCode.UnprocessableEntity,
            (await KeyedAsync(ada, "/api/accounts", "k1", nina with { name = "Nino" })).Status);
    }

    // What was refused once may be put right under the same key.
    [Fact]
    public async Task PostAccounts_RefusedThenRight_UnderOneKey_IsAdded()
    {
        await using var company = await Company.StartAsync();
        var ada = await company.BrowserOfAsync("ada");

        Assert.Equal(HttpStatusCode.UnprocessableEntity,
            (await KeyedAsync(ada, "/api/accounts", "k1",
                new { name = "nina", password = "short", roles = Desk })).Status);
        Assert.Equal(HttpStatusCode.NoContent,
            (await KeyedAsync(ada, "/api/accounts", "k1",
                new { name = "nina", password = Company.Password, roles = Desk })).Status);
        Assert.NotNull(company.Book.Find("nina"));
    }

    [Fact]
    public async Task GetWork_FollowingTheLinks_ShowsEachOnce()
    {
        await using var server = await RunningServer.StartAsync();
        for (int made = 0; made < 7; made++)
        {
            string id = await server.OpenCaseAsync();
            await server.PostAsync($"/api/cases/{id}/turns", """{"turnId":"t1","text":"water drips"}""");
        }

        foreach (string order in new[] { "newest", "oldest", "series", "fault" })
        {
            var seen = await FollowAsync(server.Http, $"/api/work?text=water&order={order}&limit=3",
                line => line.GetProperty("case"));
            Assert.Equal((7, 7), (seen.Length, seen.Distinct(StringComparer.Ordinal).Count()));
        }

        foreach (string place in new[] { "x", "-1", "99999999999999999999" })
            Assert.Equal(HttpStatusCode.BadRequest, (await server.GetAsync($"/api/work?after={place}")).Status);
    }

    [Fact]
    public async Task GetCase_WithItsTag_IsNotSentAgainUntilItChanges()
    {
        await using var server = await RunningServer.StartAsync();
        string id = await server.OpenCaseAsync();
        string tag = await TagAsync(server.Http, $"/api/cases/{id}");

        Assert.Equal(HttpStatusCode.NotModified, await GetAsync(server.Http, id, tag));
        await server.PostAsync($"/api/cases/{id}/turns", """{"turnId":"t1","text":"b4"}""");
        Assert.Equal(HttpStatusCode.OK, await GetAsync(server.Http, id, tag));
    }

    [Fact]
    public async Task PostTurns_IfMatch_IsTakenOnlyOnWhatWasRead_AndAgainWhenSentAgain()
    {
        await using var server = await RunningServer.StartAsync();
        string id = await server.OpenCaseAsync();
        string tag = await TagAsync(server.Http, $"/api/cases/{id}");

        Assert.Equal(HttpStatusCode.OK, await TurnAsync(server.Http, id, "t1", tag));
        Assert.Equal(HttpStatusCode.OK, await TurnAsync(server.Http, id, "t1", tag));
        Assert.Equal(HttpStatusCode.PreconditionFailed, await TurnAsync(server.Http, id, "t2", tag));
        Assert.Equal(HttpStatusCode.PreconditionFailed,
            await TurnAsync(server.Http, id, "t2", "W/" + await TagAsync(server.Http, $"/api/cases/{id}")));
        Assert.Equal(HttpStatusCode.BadRequest, await TurnAsync(server.Http, id, "t2", tag.Trim('"')));
        Assert.Equal(HttpStatusCode.OK, await TurnAsync(server.Http, id, "t2", "*"));
        Assert.Equal(3, (await server.GetAsync($"/api/cases/{id}/turns")).Json.GetArrayLength());
    }

    // All read the same, and each wants to be the next.
    [Fact]
    public async Task PostTurns_ManyAtOnceOnOneTag_OneIsTaken()
    {
        await using var server = await RunningServer.StartAsync();
        string id = await server.OpenCaseAsync();
        string tag = await TagAsync(server.Http, $"/api/cases/{id}");

        var taken = await Task.WhenAll(Enumerable.Range(0, 12).Select(i => TurnAsync(server.Http, id, $"t{i}", tag)));

        Assert.Single(taken, HttpStatusCode.OK);
        Assert.Equal(11, taken.Count(status => status == HttpStatusCode.PreconditionFailed));
    }

    [Theory]
    [InlineData("/api/cases")]
    [InlineData("/api/claims")]
    [InlineData("/api/work")]
    public async Task Lists_LimitThatIsNone_IsRefused(string path)
    {
        await using var server = await RunningServer.StartAsync();

        foreach (string limit in new[] { "0", "1001", "many" })
            Assert.Equal(HttpStatusCode.BadRequest, (await server.GetAsync($"{path}?limit={limit}")).Status);
        Assert.Equal(HttpStatusCode.OK, (await server.GetAsync($"{path}?limit=1000")).Status);
    }

    // A technician has seven cases between eight of somebody else.
    [Fact]
    public async Task GetCases_FollowingTheLinks_ShowsEachOfOnesOwnOnce()
    {
        await using var company = await Company.StartAsync();
        var (tom, tilda) = (await company.BrowserOfAsync("tom"), await company.BrowserOfAsync("tilda"));
        var own = new List<string>();
        for (int made = 0; made < 15; made++)
        {
            var browser = made % 2 == 0 ? tilda : tom;
            string id = await Company.OpenCaseAsync(browser);
            using var turn =
                await browser.PostAsJsonAsync($"/api/cases/{id}/turns", new { turnId = "t1", text = "b4" });
            if (browser == tom) own.Insert(0, id);
        }

        Assert.Equal(own, await FollowAsync(tom, "/api/cases?limit=3"));
    }

    private static async Task<ImmutableArray<string>> FollowAsync(HttpClient http, string? path,
        Func<JsonElement, JsonElement>? inside = null)
    {
        var all = ImmutableArray.CreateBuilder<string>();
        for (int pages = 0; path is not null; pages++)
        {
            Assert.True(pages < 10, "the pages do not end");
            using var answer = await http.GetAsync(path);
            var page = await answer.Content.ReadFromJsonAsync<JsonElement>();
            all.AddRange(page.EnumerateArray()
                .Select(line => (inside?.Invoke(line) ?? line).GetProperty("id").GetString()!));
            path = answer.Headers.TryGetValues("Link", out var links) ? links.Single().Split('<', '>')[1] : null;
        }

        return all.ToImmutable();
    }

    private static async Task<(HttpStatusCode Status, string? Id)> OpenAsync(HttpClient http, string key)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, "/api/cases");
        request.Headers.TryAddWithoutValidation("Idempotency-Key", key);
        using var answer = await http.SendAsync(request);
        var view = await answer.Content.ReadFromJsonAsync<JsonElement>();
        return (answer.StatusCode, view.TryGetProperty("id", out var id) ? id.GetString() : null);
    }

    private static async Task<(HttpStatusCode Status, JsonElement Json)> KeyedAsync(HttpClient http, string path,
        string key, object body)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, path) { Content = JsonContent.Create(body) };
        request.Headers.Add("Idempotency-Key", key);
        using var answer = await http.SendAsync(request);
        string text = await answer.Content.ReadAsStringAsync();
        return (answer.StatusCode, text.Length == 0 ? default : JsonDocument.Parse(text).RootElement.Clone());
    }

    private static async Task<HttpStatusCode> NoteAsync(HttpClient http, string id, string key, string text)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, $"/api/cases/{id}/call/notes")
        {
            Content = JsonContent.Create(new { text }),
        };
        request.Headers.Add("Idempotency-Key", key);
        using var answer = await http.SendAsync(request);
        return answer.StatusCode;
    }

    private static async Task<string> TagAsync(HttpClient http, string path)
    {
        using var answer = await http.GetAsync(path);
        return answer.Headers.ETag!.ToString();
    }

    private static async Task<HttpStatusCode> GetAsync(HttpClient http, string id, string tag)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, $"/api/cases/{id}");
        request.Headers.Add("If-None-Match", tag);
        using var answer = await http.SendAsync(request);
        return answer.StatusCode;
    }

    [Theory]
    [InlineData("/api/work?order=upwards")]
    [InlineData("/api/work?stands=lying")]
    [InlineData("/api/claims?state=lost")]
    [InlineData("/api/claims.csv?state=lost")]
    public async Task List_ValueThatIsNone_IsRefused(string path)
    {
        await using var server = await RunningServer.StartAsync();
        using var answer = await server.Http.GetAsync(path);
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
    }

    private static async Task<HttpStatusCode> TurnAsync(HttpClient http, string id, string turnId, string tag)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, $"/api/cases/{id}/turns")
        {
            Content = new StringContent(JsonSerializer.Serialize(new { turnId, text = "b4" }), Encoding.UTF8,
                "application/json"),
        };
        request.Headers.TryAddWithoutValidation("If-Match", tag);
        using var answer = await http.SendAsync(request);
        return answer.StatusCode;
    }
}
