using System.Net;
using System.Text.Json;
using System.Text.Json.Nodes;
using DxAssistant.Bot.Tests.Cases;
using DxAssistant.Cases;

namespace DxAssistant.Bot.Tests.Server;

/// <summary>
/// The front for outside channels.
/// Source: Bot Framework activity schema, sections on deliveryMode <c>expectReplies</c> and suggested actions (from
/// memory).
/// </summary>
public sealed class BotFrontTests
{
    [Fact]
    public async Task PostMessages_ExpectReplies_AnswersInTheResponse()
    {
        await using var server = await RunningServer.StartAsync();

        var (status, json) = await server.PostAsync("/api/messages", Message("m1", "fan dead"));

        Assert.Equal(HttpStatusCode.OK, status);
        Assert.Equal("You said fan dead.", TextOf(json));
    }

    [Fact]
    public async Task PostMessages_SameActivityTwice_IsOneTurn()
    {
        var echo = new EchoResponder();
        await using var server = await RunningServer.StartAsync(echo);

        var (_, first) = await server.PostAsync("/api/messages", Message("m1", "fan dead"));
        var (_, second) = await server.PostAsync("/api/messages", Message("m1", "fan dead"));

        Assert.Equal(TextOf(first), TextOf(second));
        Assert.Equal(2, echo.Asked);
    }

    [Fact]
    public async Task PostMessages_TwoConversations_AreTwoCases()
    {
        await using var server = await RunningServer.StartAsync(new WalkResponder());

        await server.PostAsync("/api/messages", Message("m1", "fan dead", conversation: "one"));
        var (_, other) = await server.PostAsync("/api/messages", Message("m1", "water drips", conversation: "two"));

        Assert.Contains("water drips", TextOf(other), StringComparison.Ordinal);
        Assert.Equal(2, (await server.Store.ListAsync(10)).Length);
    }

    [Fact]
    public async Task PostMessages_QuestionWithOptions_SuggestsThemAndTakesTheTap()
    {
        await using var server = await RunningServer.StartAsync(new WalkResponder());
        var (_, json) = await server.PostAsync("/api/messages", Message("m1", "fan dead"));
        var action = json.GetProperty("activities")[0].GetProperty("suggestedActions").GetProperty("actions")[0];

        var (_, next) = await server.PostAsync(
            "/api/messages", Message("m2", null, value: action.GetProperty("value").GetRawText()));

        Assert.Equal("messageBack", action.GetProperty("type").GetString());
        Assert.Equal("Yes", action.GetProperty("title").GetString());
        Assert.Contains("choice yes", TextOf(next), StringComparison.Ordinal);
    }

    [Fact]
    public async Task PostMessages_PersonJoins_IsGreeted()
    {
        await using var server = await RunningServer.StartAsync();

        var (_, json) = await server.PostAsync("/api/messages", """
            {"type":"conversationUpdate","id":"u1","channelId":"test","deliveryMode":"expectReplies","serviceUrl":"http://localhost:1",
             "conversation":{"id":"c"},"recipient":{"id":"bot"},"membersAdded":[{"id":"bot"},{"id":"p","name":"Pat"}]}
            """);

        Assert.Equal("You said nothing yet.", TextOf(json));
    }

    [Theory]
    [InlineData("http://collector.example/")]
    [InlineData("file:///etc/passwd")]
    [InlineData("")]
    public async Task PostMessages_RepliesToAnAddressNotNamed_IsTurnedAway(string serviceUrl)
    {
        await using var server = await RunningServer.StartAsync();

        var (status, json) = await server.PostAsync(
            "/api/messages", Message("m1", "fan dead", serviceUrl: serviceUrl, expectReplies: false));

        Assert.Equal(HttpStatusCode.Forbidden, status);
        Assert.Contains("--service-url", json.GetProperty("detail").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task PostMessages_NobodyAtTheServiceUrl_IsABadGatewayAndTheTurnIsKept()
    {
        var echo = new EchoResponder();
        await using var server = await RunningServer.StartAsync(echo);
        string message = Message("m1", "fan dead", expectReplies: false);

        var (status, json) = await server.PostAsync("/api/messages", message);
        await server.PostAsync("/api/messages", message);

        Assert.Equal(HttpStatusCode.BadGateway, status);
        Assert.Contains("what was said is kept", json.GetProperty("detail").GetString(), StringComparison.Ordinal);
        Assert.Equal(2, echo.Asked);
    }

    [Theory]
    [InlineData("{")]
    [InlineData("7")]
    [InlineData("{}")]
    [InlineData("""{"type":"message"}""")]
    [InlineData("""{"type":"message","conversation":{}}""")]
    public async Task PostMessages_NoActivity_IsABadRequest(string body)
    {
        await using var server = await RunningServer.StartAsync();

        var (status, json) = await server.PostAsync("/api/messages", body);

        Assert.Equal(HttpStatusCode.BadRequest, status);
        Assert.NotEmpty(json.GetProperty("detail").GetString()!);
    }

    [Theory]
    [InlineData("""{"serviceUrl":"file:///etc/passwd"}""")]
    [InlineData("""{"serviceUrl":"not an address"}""")]
    [InlineData("""{"serviceUrl":""}""")]
    [InlineData("""{"serviceUrl":null}""")]
    [InlineData("""{"conversation":{"id":"half \ud83d"}}""")]
    public async Task PostMessages_PartThatNoTurnCanBeMadeOf_IsABadRequest(string part)
    {
        await using var server = await RunningServer.StartAsync();

        var (status, json) = await server.PostAsync("/api/messages", With(part));

        Assert.Equal(HttpStatusCode.BadRequest, status);
        Assert.NotEmpty(json.GetProperty("detail").GetString()!);
    }

    [Theory]
    [InlineData("""{"id":""}""")]
    [InlineData("""{"id":"half \ud83d"}""")]
    [InlineData("""{"from":{"id":"p","name":"half \ud83d"}}""")]
    [InlineData("""{"from":null}""")]
    [InlineData("""{"recipient":null}""")]
    [InlineData("""{"value":{"shown":"a card"}}""")]
    [InlineData("""{"value":"yes"}""")]
    [InlineData("""{"value":[1]}""")]
    public async Task PostMessages_OddPart_TheWordsAreTakenAllTheSame(string part)
    {
        await using var server = await RunningServer.StartAsync();

        var (status, json) = await server.PostAsync("/api/messages", With(part));

        Assert.Equal(HttpStatusCode.OK, status);
        Assert.Equal("You said fan dead.", TextOf(json));
    }

    [Theory]
    [InlineData("membersAdded")]
    [InlineData("membersRemoved")]
    public async Task PostMessages_MemberIsNull_IsPassedOver(string list)
    {
        await using var server = await RunningServer.StartAsync();

        var (status, _) = await server.PostAsync(
            "/api/messages", With($$"""{"type":"conversationUpdate","{{list}}":[null]}"""));

        Assert.Equal(HttpStatusCode.OK, status);
    }

    [Theory]
    [InlineData("opening")]
    [InlineData("a-name-of-more-than-sixty-four-characters-that-a-channel-may-well-give-to-an-activity")]
    public async Task PostMessages_IdThatNoTurnMayHave_IsStillOneTurnOfItsOwn(string id)
    {
        var echo = new EchoResponder();
        await using var server = await RunningServer.StartAsync(echo);

        var (_, first) = await server.PostAsync("/api/messages", Message(id, "fan dead"));
        var (_, second) = await server.PostAsync("/api/messages", Message(id, "fan dead"));

        Assert.Equal("You said fan dead.", TextOf(first));
        Assert.Equal(TextOf(first), TextOf(second));
        Assert.Equal(2, echo.Asked);
        var line = Assert.Single(await server.Store.ListAsync(10));
        Assert.All(await server.Store.ReadAsync(line.Id), stored => Assert.InRange(stored.TurnId.Length, 1, 64));
    }

    [Theory]
    [InlineData("local")]
    [InlineData("Local")]
    public async Task PostMessages_ChannelOfTheWebChat_DoesNotReachItsCases(string channel)
    {
        await using var server = await RunningServer.StartAsync();
        string id = await server.OpenCaseAsync();
        var before = await server.Store.ReadAsync(id);

        var (status, _) = await server.PostAsync("/api/messages", With(
            $$$"""{"channelId":"{{{channel}}}","conversation":{"id":"{{{id}}}"}}"""));

        Assert.Equal(HttpStatusCode.Forbidden, status);
        Assert.Equal(before.Select(e => e.Hash), (await server.Store.ReadAsync(id)).Select(e => e.Hash));
    }

    /// <summary>A usual message with some parts put in place of its own.</summary>
    private static string With(string parts)
    {
        var message = JsonNode.Parse(Message("m1", "fan dead"))!.AsObject();
        foreach (var part in JsonDocument.Parse(parts).RootElement.EnumerateObject())
            message[part.Name] = new JsonObject();
        string json = message.ToJsonString();
        foreach (var part in JsonDocument.Parse(parts).RootElement.EnumerateObject())
            json = json.Replace(
                $"\"{part.Name}\":{{}}", $"\"{part.Name}\":{part.Value.GetRawText()}", StringComparison.Ordinal);
        return json;
    }

    private static string Message(
        string id, string? text, string? value = null, string conversation = "c",
        string serviceUrl = "http://localhost:1", bool expectReplies = true) =>
        JsonSerializer.Serialize(new Dictionary<string, object?>
        {
            ["type"] = "message",
            ["id"] = id,
            ["text"] = text,
            ["value"] = value is null ? null : JsonDocument.Parse(value).RootElement,
            ["channelId"] = "test",
            ["serviceUrl"] = serviceUrl,
            ["deliveryMode"] = expectReplies ? "expectReplies" : "normal",
            ["conversation"] = new { id = conversation },
            ["from"] = new { id = "p" },
            ["recipient"] = new { id = "bot" },
        });

    private static string TextOf(JsonElement json) =>
        json.GetProperty("activities")[0].GetProperty("text").GetString()!;
}
