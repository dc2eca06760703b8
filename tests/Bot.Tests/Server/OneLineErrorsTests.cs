using System.Net;
using System.Text.Json;
using DxAssistant.Bot.Tests.Cases;
using DxAssistant.Cases.Sqlite;
using DxAssistant.Server.Serving;
using Microsoft.AspNetCore.Http;
using Microsoft.Data.Sqlite;

namespace DxAssistant.Bot.Tests.Server;

/// <summary>What is said fits what was asked.</summary>
public sealed class OneLineErrorsTests
{
    [Fact]
    public async Task Turn_CoreFails_SaysWhatElseToSay() => Assert.Contains(
        "say it in other words", await FailedPostAsync("/api/cases/ID/turns", """{"turnId":"t1","text":"x"}"""),
        StringComparison.Ordinal);

    [Fact]
    public async Task Opening_CoreFails_SpeaksOfTheSheet() => Assert.StartsWith(
        "The sheet could not be opened.", await FailedPostAsync("/api/cases", ""), StringComparison.Ordinal);

    [Fact]
    public async Task Activity_CoreFails_SpeaksToTheChannel()
    {
        string line = await FailedPostAsync("/api/messages", """
            {"type":"message","id":"m1","text":"x","channelId":"test","serviceUrl":"http://localhost:1/",
             "deliveryMode":"expectReplies","conversation":{"id":"c"},"from":{"id":"p"},"recipient":{"id":"bot"}}
            """);

        Assert.StartsWith("the activity could not be answered", line, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/api/cases")]
    [InlineData("/api/cases/a")]
    [InlineData("/api/messages")]
    public void Reading_ProgramFails_SaysThatNothingWasChanged(string path)
    {
        var request = new DefaultHttpContext().Request;
        (request.Method, request.Path) = ("GET", path);

        Assert.Contains("nothing was changed", FailureText.Of(request), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Reading_FileIsSpoiled_SaysNothingOfSaving()
    {
        using var folder = new TemporaryFolder();
        string file = folder.File("cases.db");
        await using var server = await RunningServer.StartAsync(
            SqliteCaseStore.Open(file, TimeProvider.System), new EchoResponder());
        string id = await server.OpenCaseAsync();
        await DropAsync(file);

        foreach (string path in new[] { "/api/cases", $"/api/cases/{id}", $"/api/cases/{id}/summary" })
        {
            var (status, json) = await server.GetAsync(path);

            Assert.Equal(HttpStatusCode.ServiceUnavailable, status);
            Assert.Matches("^Cannot be shown: (the file of cases|case [^ ]+) cannot be read: ", LineOf(json));
        }
    }

    private static async Task<string> FailedPostAsync(string path, string body)
    {
        var echo = new EchoResponder();
        await using var server = await RunningServer.StartAsync(echo);
        string id = await server.OpenCaseAsync();
        echo.WhenAsked = _ => throw new InvalidOperationException("broken on purpose");

        var (status, json) = await server.PostAsync(path.Replace("ID", id, StringComparison.Ordinal), body);

        Assert.Equal(HttpStatusCode.InternalServerError, status);
        return LineOf(json);
    }

    private static async Task DropAsync(string file)
    {
        await using var connection = new SqliteConnection($"Data Source={file};Pooling=False");
        await connection.OpenAsync();
        await using var command = connection.CreateCommand();
        command.CommandText = "DROP TABLE event; DROP TABLE job";
        await command.ExecuteNonQueryAsync();
    }

    private static string LineOf(JsonElement json) => json.GetProperty("detail").GetString()!;
}
