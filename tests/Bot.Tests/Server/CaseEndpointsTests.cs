using System.Net;
using System.Text.Json;
using DxAssistant.Bot.Tests.Cases;
using DxAssistant.Cases.Sqlite;

namespace DxAssistant.Bot.Tests.Server;

public sealed class CaseEndpointsTests
{
    [Fact]
    public async Task PostCases_Opens_AndShowsTheFirstReply()
    {
        await using var server = await RunningServer.StartAsync();

        var (status, view) = await server.PostAsync("/api/cases", "");

        Assert.Equal(HttpStatusCode.Created, status);
        Assert.Matches("^[A-Za-z0-9_-]{22}$", view.GetProperty("id").GetString());
        Assert.Equal("You said nothing yet.", TextOf(view.GetProperty("turns")[0]));
    }

    [Fact]
    public async Task PostCases_Twice_GivesTwoNames()
    {
        await using var server = await RunningServer.StartAsync();

        Assert.NotEqual(await server.OpenCaseAsync(), await server.OpenCaseAsync());
    }

    [Fact]
    public async Task PostTurns_Words_AnswersAndKeepsBoth()
    {
        await using var server = await RunningServer.StartAsync();
        string id = await server.OpenCaseAsync();

        var (status, taken) = await server.PostAsync($"/api/cases/{id}/turns", """{"turnId":"t1","text":"fan dead"}""");
        var (_, view) = await server.GetAsync($"/api/cases/{id}");

        Assert.Equal(HttpStatusCode.OK, status);
        Assert.Equal("You said fan dead.", TextOf(taken.GetProperty("turn")));
        Assert.Equal("fan dead", view.GetProperty("turns")[1].GetProperty("said").GetString());
        Assert.Equal(taken.GetProperty("turn").ToString(), view.GetProperty("turns")[1].ToString());
    }

    [Fact]
    public async Task PostTurns_WordsWithTheirQuestion_AreTakenForThatQuestion()
    {
        await using var server = await RunningServer.StartAsync(new WalkResponder());
        string id = await server.OpenCaseAsync();

        var (_, taken) = await server.PostAsync(
            $"/api/cases/{id}/turns", """{"turnId":"t1","text":"done","question":"q0"}""");

        Assert.Equal("Given: done to q0", TextOf(taken.GetProperty("turn")));
    }

    [Fact]
    public async Task PostTurns_SameTurnIdAgain_GivesTheSameAnswerAndOneTurn()
    {
        await using var server = await RunningServer.StartAsync();
        string id = await server.OpenCaseAsync();
        var (_, first) = await server.PostAsync($"/api/cases/{id}/turns", """{"turnId":"t1","text":"fan dead"}""");

        var (_, second) = await server.PostAsync($"/api/cases/{id}/turns", """{"turnId":"t1","text":"fan dead"}""");

        Assert.Equal(first.ToString(), second.ToString());
        Assert.Equal(2, (await server.GetAsync($"/api/cases/{id}")).Json.GetProperty("turns").GetArrayLength());
    }

    [Fact]
    public async Task PostTurns_AfterARestart_TheCaseGoesOn()
    {
        using var folder = new TemporaryFolder();
        string file = folder.File("cases.db");
        string id;
        var first = SqliteCaseStore.Open(file, TimeProvider.System);
        await using (var before = await RunningServer.StartAsync(first, new EchoResponder()))
        {
            id = await before.OpenCaseAsync();
        }

        await using var after = await RunningServer.StartAsync(
            SqliteCaseStore.Open(file, TimeProvider.System), new EchoResponder());
        var (status, _) = await after.PostAsync($"/api/cases/{id}/turns", """{"turnId":"t1","text":"fan dead"}""");

        Assert.Equal(HttpStatusCode.OK, status);
    }

    [Theory]
    [InlineData("not json", HttpStatusCode.BadRequest)]
    [InlineData("[]", HttpStatusCode.BadRequest)]
    [InlineData("null", HttpStatusCode.BadRequest)]
    [InlineData("""{"turnId":"t1"}""", HttpStatusCode.BadRequest)]
    [InlineData("""{"text":"no turn id"}""", HttpStatusCode.BadRequest)]
    [InlineData("""{"turnId":"","text":"x"}""", HttpStatusCode.BadRequest)]
    [InlineData("""{"turnId":"opening","text":"x"}""", HttpStatusCode.BadRequest)]
    [InlineData("""{"turnId":"half \ud83d","text":"x"}""", HttpStatusCode.BadRequest)]
    [InlineData("""{"turnId":"t1","text":7}""", HttpStatusCode.BadRequest)]
    [InlineData("""{"turnId":"t1","text":"half \ud83d"}""", HttpStatusCode.BadRequest)]
    [InlineData("""{"turnId":"t1","answer":{}}""", HttpStatusCode.BadRequest)]
    [InlineData("""{"turnId":"t1","answer":{"command":"explode"}}""", HttpStatusCode.BadRequest)]
    [InlineData("""{"turnId":"t1","answer":{"readings":["1","2"]}}""", HttpStatusCode.BadRequest)]
    public async Task PostTurns_NotATurn_OneLineAndNothingKept(string body, HttpStatusCode expected)
    {
        await using var server = await RunningServer.StartAsync();
        string id = await server.OpenCaseAsync();

        var (status, json) = await server.PostAsync($"/api/cases/{id}/turns", body);

        Assert.Equal(expected, status);
        Assert.DoesNotContain('\n', json.GetProperty("detail").GetString()!);
        Assert.Equal(1, (await server.GetAsync($"/api/cases/{id}")).Json.GetProperty("turns").GetArrayLength());
    }

    [Theory]
    [InlineData(4001)]
    [InlineData(100_000)]
    [InlineData(1_000_000)]
    public async Task PostTurns_FarTooLong_SaysHowLongItMayBe(int length)
    {
        await using var server = await RunningServer.StartAsync();
        string id = await server.OpenCaseAsync();

        var (status, json) = await server.PostAsync(
            $"/api/cases/{id}/turns", JsonSerializer.Serialize(new { turnId = "t1", text = new string('x', length) }));

        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, status);
        Assert.Contains("at most 4000 characters", json.GetProperty("detail").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task PostTurns_LongestAllowed_IsTaken()
    {
        await using var server = await RunningServer.StartAsync();
        string id = await server.OpenCaseAsync();

        var (status, _) = await server.PostAsync(
            $"/api/cases/{id}/turns", JsonSerializer.Serialize(new { turnId = "t1", text = new string('Ω', 4000) }));

        Assert.Equal(HttpStatusCode.OK, status);
    }

    [Fact]
    public async Task PostTurns_ControlCharacters_BecomeBlanks()
    {
        await using var server = await RunningServer.StartAsync();
        string id = await server.OpenCaseAsync();

        var (_, taken) = await server.PostAsync(
            $"/api/cases/{id}/turns", """{"turnId":"t1","text":"\u0000fan\u001b[31m\ndead\u0007"}""");

        Assert.Equal("fan [31m dead", taken.GetProperty("turn").GetProperty("said").GetString());
    }

    [Theory]
    [InlineData("nobody-knows-this-case")]
    [InlineData("..%2F..%2Fetc")]
    public async Task AnyRequest_UnknownCase_SaysSo(string id)
    {
        await using var server = await RunningServer.StartAsync();

        var shown = await server.GetAsync($"/api/cases/{id}");
        var taken = await server.PostAsync($"/api/cases/{id}/turns", """{"turnId":"t1","text":"x"}""");

        Assert.Equal(HttpStatusCode.NotFound, shown.Status);
        Assert.Equal(HttpStatusCode.NotFound, taken.Status);
        Assert.StartsWith(
            "There is no such case here.", taken.Json.GetProperty("detail").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task PostTurns_PlainTextBody_IsTurnedAway()
    {
        // A form on a page elsewhere can send text/plain to this machine, but not application/json.
        await using var server = await RunningServer.StartAsync();
        string id = await server.OpenCaseAsync();

        var (status, _) = await server.PostAsync(
            $"/api/cases/{id}/turns", """{"turnId":"t1","text":"x"}""", "text/plain");

        Assert.Equal(HttpStatusCode.UnsupportedMediaType, status);
    }

    [Fact]
    public async Task PostTurns_CoreFails_SaysSoAndKeepsWhatWasThere()
    {
        var echo = new EchoResponder();
        await using var server = await RunningServer.StartAsync(echo);
        string id = await server.OpenCaseAsync();
        echo.WhenAsked = _ => throw new InvalidOperationException("broken on purpose");

        var (status, json) = await server.PostAsync($"/api/cases/{id}/turns", """{"turnId":"t1","text":"x"}""");

        Assert.Equal(HttpStatusCode.InternalServerError, status);
        Assert.DoesNotContain("broken on purpose", json.GetProperty("detail").GetString(), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.OK, (await server.GetAsync($"/api/cases/{id}")).Status);
    }

    [Fact]
    public async Task GetCases_NothingSaidYet_IsNotListed()
    {
        await using var server = await RunningServer.StartAsync();
        await server.OpenCaseAsync();

        Assert.Equal(0, (await server.GetAsync("/api/cases")).Json.GetArrayLength());
    }

    private static string TextOf(JsonElement turn) =>
        turn.GetProperty("reply").GetProperty("segments")[0].GetProperty("text").GetString()!;
}
