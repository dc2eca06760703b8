using System.Net;
using System.Net.Sockets;

namespace DxAssistant.Bot.Tests.Server;

/// <summary>Two readers look at an activity, the check and the adapter; they must see the same.</summary>
public sealed class ActivityNamesTests
{
    [Theory]
    [InlineData("\"serviceUrl\":\"http://localhost:1/\",\"ServiceUrl\":\"ADDRESS\"")]
    [InlineData("\"serviceUrl\":\"ADDRESS\",\"serviceUrl\":\"http://localhost:1/\"")]
    [InlineData("\"deliveryMode\":\"expectReplies\",\"DeliveryMode\":\"normal\",\"serviceUrl\":\"ADDRESS\"")]
    [InlineData("\"serviceURL\":\"ADDRESS\"")]
    [InlineData("\"extra\":1,\"EXTRA\":2,\"serviceUrl\":\"http://localhost:1/\"")]
    [InlineData("\"$ref\":\"1\",\"serviceUrl\":\"http://localhost:1/\"")]
    [InlineData("\"Id\":\"m1\",\"serviceUrl\":\"http://localhost:1/\"")]
    public async Task PostMessages_NameThatReadersTakeDifferently_IsABadRequestAndNothingIsPosted(string parts)
    {
        using var elsewhere = new TcpListener(IPAddress.Loopback, 0);
        elsewhere.Start();
        string address = $"http://{elsewhere.LocalEndpoint}/";
        await using var server = await RunningServer.StartAsync();

        var (status, json) = await server.PostAsync("/api/messages", Activity(
            parts.Replace("ADDRESS", address, StringComparison.Ordinal), "\"id\":\"c\""));

        Assert.Equal(HttpStatusCode.BadRequest, status);
        Assert.Contains("the name", json.GetProperty("detail").GetString(), StringComparison.Ordinal);
        Assert.False(elsewhere.Pending());
    }

    [Theory]
    [InlineData("\"id\":\"c\",\"ID\":\"d\"")]
    [InlineData("\"id\":\"c\",\"id\":\"d\"")]
    [InlineData("\"id\":\"c\",\"TenantId\":\"d\"")]
    public async Task PostMessages_SuchANameInTheConversation_IsABadRequest(string conversation)
    {
        await using var server = await RunningServer.StartAsync();

        var (status, _) = await server.PostAsync("/api/messages", Activity(
            "\"serviceUrl\":\"http://localhost:1/\",\"deliveryMode\":\"expectReplies\"", conversation));

        Assert.Equal(HttpStatusCode.BadRequest, status);
    }

    private static string Activity(string parts, string conversation) =>
        "{\"type\":\"message\",\"text\":\"fan dead\",\"channelId\":\"test\",\"from\":{\"id\":\"p\"},"
        + $"\"recipient\":{{\"id\":\"bot\"}},{parts},\"conversation\":{{{conversation}}}}}";
}
