using System.Net;
using System.Text;
using System.Text.Json;

namespace DxAssistant.Bot.Tests.Server.Api;

/// <summary>
/// What the API's page shows is what happens, from its first example to its last, on the shipped pages.
/// </summary>
public sealed class DocumentedExampleTests
{
    private static readonly string Page = File.ReadAllText(Repository.PathOf("bot", "Server", "Api", "API.md"));

    [Fact]
    public async Task Examples_OneAfterTheOther_AreAnsweredAsShown()
    {
        await using var server = await RunningServer.StartAsync(Shipped.InUse);
        var known = new Dictionary<string, string>(StringComparer.Ordinal);
        var examples = DocumentedExample.In(Page);

        foreach (var example in examples) await RunAsync(server.Http, example, known);

        Assert.True(examples.Length > 10);
        Assert.Contains("case", known.Keys);
    }

    private static async Task RunAsync(HttpClient http, DocumentedExample example, Dictionary<string, string> known)
    {
        string path = DocumentedExample.Fill(example.Path, known);
        using var request = new HttpRequestMessage(new HttpMethod(example.Method), path);
        foreach (var (name, value) in example.Headers) request.Headers.Add(name, DocumentedExample.Fill(value, known));
        if (example.Body.Length > 0)
            request.Content = new StringContent(example.Body, Encoding.UTF8, "application/json");

        using var answer = await http.SendAsync(request);

        string said = await answer.Content.ReadAsStringAsync();
        Assert.True((HttpStatusCode)example.Status == answer.StatusCode,
            $"{example.Method} {path}: {answer.StatusCode} {said}");
        var headers = answer.Headers.Concat(answer.Content.Headers)
            .ToDictionary(one => one.Key, one => string.Join(", ", one.Value), StringComparer.OrdinalIgnoreCase);
        foreach (var (name, value) in example.AnswerHeaders) DocumentedExample.Compare(value, headers[name], known);
        if (example.AnswerBody.Length > 0)
            DocumentedExample.Compare(JsonDocument.Parse(example.AnswerBody).RootElement,
                JsonDocument.Parse(said).RootElement, known);
    }
}
