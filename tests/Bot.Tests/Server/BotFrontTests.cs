using System.Net;
using System.Text.Json;
using DxAssistant.Bot.Tests.Cases;

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
        Assert.Contains("--service-url", json.GetProperty("error").GetString(), StringComparison.Ordinal);
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
        Assert.NotEmpty(json.GetProperty("error").GetString()!);
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
