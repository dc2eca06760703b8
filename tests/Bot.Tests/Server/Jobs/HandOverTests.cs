using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using DxAssistant.Bot.Tests.Cases;
using DxAssistant.Bot.Tests.Server.Accounts;
using DxAssistant.Cases.Codes;
using DxAssistant.Server.HandOver;

namespace DxAssistant.Bot.Tests.Server.Jobs;

/// <summary>A case is handed over by a few words, live, and to nobody who guesses.</summary>
public sealed class HandOverTests
{
    private static readonly DateTimeOffset Noon = new(2030, 5, 6, 12, 0, 0, TimeSpan.Zero);

    [Fact]
    public void Words_OfCodes_CannotBeTakenForEachOther()
    {
        Assert.True(CodeWords.All.Length >= 100);
        Assert.All(CodeWords.All, word => Assert.Matches("^[a-z]{4,8}$", word));
        foreach (string one in CodeWords.All)
            foreach (string other in CodeWords.All)
                Assert.True(
                    one == other || (Distance(one, other) >= 3 && Distance(Sound(one), Sound(other)) >= 2),
                    $"{one} and {other} are alike");
    }

    [Fact]
    public async Task Use_Code_LetsInOnceHoweverItIsTyped()
    {
        using var book = new HandOverBook(CodeBook.InMemory(), new SetClock(Noon));
        string code = (await book.DrawAsync("a", default)).Code;

        Assert.Equal(("a", false),
            await book.UseAsync($"  {code.ToUpperInvariant().Replace(' ', '-')} ", "tilda", default));
        Assert.Equal((null, false), await book.UseAsync(code, "tilda", default));
    }

    [Fact]
    public async Task Use_CodeAfterTenMinutesOrAfterANewOne_IsNotValid()
    {
        var clock = new SetClock(Noon);
        using var book = new HandOverBook(CodeBook.InMemory(), clock);
        string first = (await book.DrawAsync("a", default)).Code, second = (await book.DrawAsync("a", default)).Code;
        Assert.Null((await book.UseAsync(first, "tilda", default)).Case);

        clock.Time = Noon + HandOverBook.Lasts;

        Assert.Null((await book.UseAsync(second, "tilda", default)).Case);
    }

    [Fact]
    public async Task Use_FiveWrongCodes_ShutOutThatPersonForTenMinutes()
    {
        var clock = new SetClock(Noon);
        using var book = new HandOverBook(CodeBook.InMemory(), clock);
        for (int tried = 0; tried < 5; tried++)
            Assert.False((await book.UseAsync("no such code", "tilda", default)).TooMany);
        string code = (await book.DrawAsync("a", default)).Code;

        Assert.Equal((null, true), await book.UseAsync(code, "tilda", default));
        Assert.Equal(("a", false), await book.UseAsync(code, "tom", default));
        clock.Time = Noon + HandOverBook.Lasts;
        Assert.Equal(("b", false), await book.UseAsync((await book.DrawAsync("b", default)).Code, "tilda", default));
    }

    [Fact]
    public async Task Join_ByCode_LetsATechnicianInAndBothAreNamed()
    {
        await using var company = await Company.StartAsync();
        var (tom, tilda) = (await company.BrowserOfAsync("tom"), await company.BrowserOfAsync("tilda"));
        string id = await Company.OpenCaseAsync(tom);
        Assert.Equal(HttpStatusCode.NotFound, await Company.StatusAsync(tilda, $"/api/cases/{id}"));
        using var refused = await tilda.PostAsync($"/api/cases/{id}/hand-over", null);
        Assert.Equal(HttpStatusCode.NotFound, refused.StatusCode);

        string code = (await JsonAsync(await tom.PostAsync($"/api/cases/{id}/hand-over", null))).GetProperty("code")
            .GetString()!;
        var joined = await JsonAsync(await tilda.PostAsJsonAsync("/api/join", new { code }));

        Assert.Equal(id, joined.GetProperty("case").GetString());
        using var turn = await tilda.PostAsJsonAsync($"/api/cases/{id}/turns", new { turnId = "t1", text = "hello" });
        var sheet = await JsonAsync(await tom.GetAsync($"/api/cases/{id}"));
        Assert.Equal("tilda", sheet.GetProperty("turns")[1].GetProperty("by").GetString());
        Assert.Equal(["tom technician", "tilda technician"], sheet.GetProperty("hands").EnumerateArray()
            .Select(hand => $"{hand.GetProperty("name").GetString()} {hand.GetProperty("as").GetString()}"));
        Assert.Contains(company.Book.Audit(50), line => line is { Who: "tilda", Did: "joined case" });
    }

    [Fact]
    public async Task TakeOut_WhoJoined_ShutsThemOutAndOnlyTheOpenerMay()
    {
        await using var company = await Company.StartAsync();
        var (tom, tilda) = (await company.BrowserOfAsync("tom"), await company.BrowserOfAsync("tilda"));
        string id = await Company.OpenCaseAsync(tom);
        string code = (await JsonAsync(await tom.PostAsync($"/api/cases/{id}/hand-over", null))).GetProperty("code")
            .GetString()!;
        await JsonAsync(await tilda.PostAsJsonAsync("/api/join", new { code }));

        Assert.Equal(HttpStatusCode.Forbidden, await SendAsync(tilda, HttpMethod.Post, $"/api/cases/{id}/hand-over"));
        Assert.Equal(HttpStatusCode.Forbidden, await SendAsync(tilda, HttpMethod.Delete, $"/api/cases/{id}/hands/tom"));
        Assert.Equal(HttpStatusCode.NotFound, await SendAsync(tom, HttpMethod.Delete, $"/api/cases/{id}/hands/tom"));
        Assert.Equal(HttpStatusCode.NoContent, await SendAsync(tom, HttpMethod.Delete, $"/api/cases/{id}/hands/tilda"));

        Assert.Equal(HttpStatusCode.NotFound, await Company.StatusAsync(tilda, $"/api/cases/{id}"));
        var sheet = await JsonAsync(await tom.GetAsync($"/api/cases/{id}"));
        Assert.Equal("tom", Assert.Single(sheet.GetProperty("hands").EnumerateArray()).GetProperty("name").GetString());
    }

    [Fact]
    public async Task TakeBack_Code_IsNoLongerValid()
    {
        await using var company = await Company.StartAsync();
        var (tom, tilda) = (await company.BrowserOfAsync("tom"), await company.BrowserOfAsync("tilda"));
        string id = await Company.OpenCaseAsync(tom);
        string code = (await JsonAsync(await tom.PostAsync($"/api/cases/{id}/hand-over", null))).GetProperty("code")
            .GetString()!;

        Assert.Equal(HttpStatusCode.NoContent, await SendAsync(tom, HttpMethod.Delete, $"/api/cases/{id}/hand-over"));

        using var joined = await tilda.PostAsJsonAsync("/api/join", new { code });
        Assert.Equal(HttpStatusCode.NotFound, joined.StatusCode);
    }

    [Fact]
    public async Task Changes_AfterTheLastEventId_TellOnlyWhatCameSince()
    {
        await using var server = await RunningServer.StartAsync();
        string id = await server.OpenCaseAsync();
        long last = (await server.GetAsync($"/api/cases/{id}")).Json.GetProperty("last").GetInt64();
        using var request = new HttpRequestMessage(HttpMethod.Get, $"/api/cases/{id}/changes");
        request.Headers.Add("Last-Event-ID", $"{last}");
        using var answer = await server.Http.SendAsync(request, HttpCompletionOption.ResponseHeadersRead);
        using var reader = new StreamReader(await answer.Content.ReadAsStreamAsync());
        Assert.Equal(":", await reader.ReadLineAsync());

        await server.PostAsync($"/api/cases/{id}/turns", """{"turnId":"t1","text":"hello"}""");

        string? line;
        do line = await reader.ReadLineAsync();
        while (line is "" or ":");
        Assert.Equal($"id: {last + 2}", line);
        Assert.Equal("text/event-stream", answer.Content.Headers.ContentType!.MediaType);
    }

    [Fact]
    public async Task Changes_OfAnotherTechniciansCase_AreNotTold()
    {
        await using var company = await Company.StartAsync();
        string id = await Company.OpenCaseAsync(await company.BrowserOfAsync("tom"));

        Assert.Equal(HttpStatusCode.NotFound,
            await Company.StatusAsync(await company.BrowserOfAsync("tilda"), $"/api/cases/{id}/changes"));
    }

    private static async Task<HttpStatusCode> SendAsync(HttpClient browser, HttpMethod method, string path)
    {
        using var request = new HttpRequestMessage(method, path);
        using var answer = await browser.SendAsync(request);
        return answer.StatusCode;
    }

    private static async Task<JsonElement> JsonAsync(HttpResponseMessage answer)
    {
        using (answer)
        {
            return await answer.Content.ReadFromJsonAsync<JsonElement>();
        }
    }

    // Roughly how a word sounds: common practice, no source.
    private static string Sound(string word) => SoundRules.Aggregate(
        word, (sound, rule) => System.Text.RegularExpressions.Regex.Replace(sound, rule.Written, rule.Heard));

    private static readonly (string Written, string Heard)[] SoundRules =
    [
        ("ck", "k"), ("c", "k"), ("ph", "f"), ("qu", "kw"), ("y", "i"), ("(el|le|al|il|ol)$", "l"),
        ("(er|ar|or|re)$", "r"),
        ("(en|on|an|in|un)$", "n"), ("(et|it|ot|at|ut)$", "t"), (@"(.)\1", "$1"),
    ];

    // Levenshtein's distance, by its definition.
    private static int Distance(string one, string other)
    {
        int[,] steps = new int[one.Length + 1, other.Length + 1];
        for (int i = 0; i <= one.Length; i++)
            for (int j = 0; j <= other.Length; j++)
                steps[i, j] = i == 0 || j == 0 ? i + j : Math.Min(
                    Math.Min(steps[i - 1, j], steps[i, j - 1]) + 1, steps[i - 1, j - 1]
                        + (one[i - 1] == other[j - 1] ? 0 : 1));
        return steps[one.Length, other.Length];
    }
}
