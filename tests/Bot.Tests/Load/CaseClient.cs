using System.Net;
using System.Text;
using System.Text.Json;

namespace DxAssistant.Bot.Tests.Load;

/// <summary>A client of the case API, with connections that stay open.</summary>
internal sealed class CaseClient : IDisposable
{
    private readonly HttpClient http;

    public CaseClient(Uri address) =>
        http = new HttpClient(new SocketsHttpHandler
        {
            PooledConnectionIdleTimeout = Timeout.InfiniteTimeSpan, UseProxy = false,
        })
    {
        BaseAddress = address, Timeout = TimeSpan.FromMinutes(2),
    };

    /// <summary>Opens a case.</summary>
    /// <returns>Its id.</returns>
    /// <exception cref="HttpRequestException">It was not opened.</exception>
    public async Task<string> OpenAsync()
    {
        using var answer = await http.PostAsync("/api/cases", null);
        answer.EnsureSuccessStatusCode();
        using var json = JsonDocument.Parse(await answer.Content.ReadAsByteArrayAsync());
        return json.RootElement.GetProperty("id").GetString()!;
    }

    /// <summary>Sends one turn and reads the answer to its end.</summary>
    /// <returns>200 when the turn is in the log.</returns>
    public Task<HttpStatusCode> SendAsync(string caseId, RecordedTurn turn) =>
        PostAsync($"/api/cases/{caseId}/turns", turn.Message);

    /// <summary>Begins a claim from a case.</summary>
    /// <returns>Its id; empty when nothing of it can be claimed.</returns>
    /// <exception cref="HttpRequestException">It was neither begun nor refused.</exception>
    public async Task<string?> ClaimAsync(string caseId)
    {
        using var answer = await http.PostAsync($"/api/cases/{caseId}/claims", null);
        if (answer.StatusCode == HttpStatusCode.UnprocessableEntity) return "";
        answer.EnsureSuccessStatusCode();
        using var json = JsonDocument.Parse(await answer.Content.ReadAsByteArrayAsync());
        return json.RootElement.GetProperty("id").GetString()!;
    }

    /// <summary>Posts JSON and reads the answer to its end.</summary>
    public async Task<HttpStatusCode> PostAsync(string path, string json)
    {
        using var body = new StringContent(json, Encoding.UTF8, "application/json");
        using var answer = await http.PostAsync(path, body);
        await answer.Content.CopyToAsync(Stream.Null);
        return answer.StatusCode;
    }

    /// <summary>Gets and reads the answer to its end.</summary>
    public Task<byte[]> GetAsync(string path) => http.GetByteArrayAsync(path);

    public Task<Stream> ListenAsync(string caseId) => http.GetStreamAsync($"/api/cases/{caseId}/changes");

    public void Dispose() => http.Dispose();
}
