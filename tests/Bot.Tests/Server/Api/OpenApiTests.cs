using System.Text.Json;
using DxAssistant.Bot.Tests.Cases.Claims;
using DxAssistant.Cases;
using DxAssistant.Cases.Accounts;
using DxAssistant.Server.Accounts;
using Microsoft.OpenApi;
using Microsoft.OpenApi.Reader;

namespace DxAssistant.Bot.Tests.Server.Api;

/// <summary>
/// The description of the API can be read by a general-purpose reader, names every address for programs, and the real
/// answers are as it says.
/// </summary>
/// <remarks>Source: OpenAPI Specification 3.1, as Microsoft.OpenApi reads it.</remarks>
public sealed class OpenApiTests
{
    [Fact]
    public async Task Document_ReadByAGeneralReader_HasNothingWrong()
    {
        await using var server = await RunningServer.StartAsync();

        var read = OpenApiDocument.Parse(await server.Http.GetStringAsync("/api/openapi.json"), "json");

        Assert.Empty(read.Diagnostic!.Errors.Select(error => error.ToString()));
        Assert.Empty(read.Diagnostic.Warnings.Select(warning => warning.ToString()));
        Assert.NotEmpty(read.Document!.Paths);
    }

    // What no token may do is the pages' own business.
    [Fact]
    public async Task Document_NamesEveryAddressThatATokenMayPass()
    {
        await using var server = await RunningServer.StartAsync();
        var document = OpenApiDocument.Parse(await server.Http.GetStringAsync("/api/openapi.json"), "json").Document!;
        string[] described = [.. document.Paths.SelectMany(
            path => path.Value.Operations!.Keys.Select(method => $"{method} {path.Key}"))];

        var missing = server.Endpoints
            .Where(one => one.RoutePattern.RawText!.StartsWith("/api/", StringComparison.Ordinal)
                && one.RoutePattern.RawText != "/api/messages")
            .Where(one => Doors.Before(one.RoutePattern.RawText) is var door
                && (door.Reads | door.Writes) != TokenScopes.None)
            .SelectMany(one => one.Metadata.OfType<Microsoft.AspNetCore.Routing.HttpMethodMetadata>()
                .Single().HttpMethods
                .Select(
                    method => $"{method} {one.RoutePattern.RawText!.Replace("{**", "{", StringComparison.Ordinal)}"))
            .Except(described);

        Assert.Empty(missing);
    }

    [Fact]
    public async Task Answers_OfTheMainAddresses_AreAsDescribed()
    {
        await using var made = await ClaimedCase.WalkedAsync();
        var claim = await made.ReadyAsync();
        await using var server = await RunningServer.StartAsync(Shipped.InUse, made.Cases, DeskBooks.InMemory()
            with { Claims = made.Claims });
        var document = OpenApiDocument.Parse(await server.Http.GetStringAsync("/api/openapi.json"), "json").Document!;
        var describe = new DescribedAnswer(document);
        string id = ClaimedCase.Id;

        foreach (var (described, path) in new[]
        {
            ("/api/cases", "/api/cases?limit=5"), ("/api/cases/{id}", $"/api/cases/{id}"),
            ("/api/cases/{id}/turns", $"/api/cases/{id}/turns"),
            ("/api/cases/{id}/summary", $"/api/cases/{id}/summary"), ("/api/cases/{id}/log", $"/api/cases/{id}/log"),
            ("/api/cases/{id}/job", $"/api/cases/{id}/job"), ("/api/cases/{id}/call", $"/api/cases/{id}/call"),
            ("/api/claims", "/api/claims"), ("/api/claims/{id}", $"/api/claims/{claim.Id}"),
            ("/api/claims.json", "/api/claims.json"),
            ("/api/claims/verify", $"/api/claims/verify?line={Uri.EscapeDataString(claim.Line!)}"),
            ("/api/work", "/api/work"), ("/api/work/filters", "/api/work/filters"), ("/api/calls", "/api/calls"),
            ("/api/content", "/api/content"), ("/api/content/pages", "/api/content/pages"),
            ("/api/cases/{id}", "/api/cases/none"), ("/api/claims/{id}", "/api/claims/none"),
            ("/api/cases", "/api/cases?limit=0"),
        })
        {
            using var answer = await server.Http.GetAsync(path);
            describe.Holds(HttpMethod.Get, described, (int)answer.StatusCode, await answer.Content.ReadAsStringAsync());
        }

        foreach (var (described, path, body) in new[]
        {
            ("/api/cases", "/api/cases", ""),
            ("/api/cases/{id}/turns", $"/api/cases/{id}/turns", """{"turnId":"again","text":"thank you"}"""),
            ("/api/cases/{id}/turns", $"/api/cases/{id}/turns", "[]"),
            ("/api/cases/{id}/claims", $"/api/cases/{id}/claims", ""),
            ("/api/claims/{id}/acts", $"/api/claims/{claim.Id}/acts", """{"act":"submit","after":3}"""),
            ("/api/claims/{id}/acts", $"/api/claims/{claim.Id}/acts", """{"act":"submit","after":4}"""),
            ("/api/cases/{id}/job", $"/api/cases/{id}/job", """{"turnId":"n1","note":"behind the boiler"}"""),
            ("/api/cases/{id}/call/notes", $"/api/cases/{id}/call/notes", """{"text":"has no ladder"}"""),
            ("/api/cases/{id}/hand-over", $"/api/cases/{id}/hand-over", ""),
        })
        {
            var (status, json) = await server.PostAsync(path, body);
            describe.Holds(HttpMethod.Post, described, (int)status, json.GetRawText());
        }
    }

    // Else nothing above could fail.
    [Theory]
    [InlineData("/api/cases/{id}", """{"id":"a"}""", "is not there")]
    [InlineData("/api/claims", """[{"id":"a","case":"b","state":"Eaten","at":"2030-05-06T12:00:00Z"}]""", "none of")]
    [InlineData("/api/content", """{"version":"v","pages":1,"pictures":1,"more":1}""", "not described")]
    [InlineData("/api/content", """{"version":1,"pages":1,"pictures":1}""", "is no")]
    public async Task Answers_ThatAreNotAsDescribed_AreFoundOut(string path, string body, string why)
    {
        await using var server = await RunningServer.StartAsync();
        var document = OpenApiDocument.Parse(await server.Http.GetStringAsync("/api/openapi.json"), "json").Document!;

        var error = Assert.Throws<InvalidDataException>(
            () => new DescribedAnswer(document).Holds(HttpMethod.Get, path, 200, body));

        Assert.Contains(why, error.Message, StringComparison.Ordinal);
    }
}
