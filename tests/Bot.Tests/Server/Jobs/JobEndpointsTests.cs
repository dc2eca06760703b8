using System.Net;
using System.Net.Http.Json;
using System.Text.Json;
using DxAssistant.Bot.Tests.Server.Accounts;

namespace DxAssistant.Bot.Tests.Server.Jobs;

/// <summary>A job over HTTP: its forms, and whose it is.</summary>
public sealed class JobEndpointsTests
{
    [Fact]
    public async Task Post_UnitPersonNoteAndVisit_AreShownAndTheChatGoesOn()
    {
        await using var server = await RunningServer.StartAsync();
        string id = await server.OpenCaseAsync();
        foreach (string body in new[]
        {
            """{"turnId":"1","unit":{"series":null,"serial":"zz 1","installed":"2024-02-29","site":"Loft"}}""",
            """{"turnId":"2","person":{"part":"owner","name":"Ann Ottery","phone":"555 01 42"}}""",
            """{"turnId":"3","note":"Ladder needed."}""", """{"turnId":"4","visit":"end"}""",
            """{"turnId":"5","turnTo":1}""",
        })
            Assert.Equal(HttpStatusCode.OK, (await server.PostAsync($"/api/cases/{id}/job", body)).Status);

        var job = (await server.GetAsync($"/api/cases/{id}/job")).Json.GetProperty("job");
        Assert.Equal("ZZ 1", job.GetProperty("unit").GetProperty("serial").GetString());
        Assert.Equal("2024-02-29", job.GetProperty("unit").GetProperty("installed").GetString());
        Assert.Equal("Ann Ottery", job.GetProperty("people")[0].GetProperty("name").GetString());
        Assert.Equal("Ladder needed.", job.GetProperty("notes")[0].GetProperty("text").GetString());
        Assert.True(job.GetProperty("visits")[0].TryGetProperty("ended", out _));

        Assert.Equal("turned", job.GetProperty("change").GetProperty("what").GetString());
        var back = (await server.PostAsync($"/api/cases/{id}/job",
            $$"""{"turnId":"6","takeBack":"{{job.GetProperty("change").GetProperty("turn").GetString()}}"}""")).Json;
        Assert.Equal("ended", back.GetProperty("job").GetProperty("change").GetProperty("what").GetString());

        var (status, turn) = await server.PostAsync($"/api/cases/{id}/turns", """{"turnId":"1","text":"hello"}""");
        Assert.Equal(HttpStatusCode.OK, status);
        Assert.Equal("hello", turn.GetProperty("turn").GetProperty("said").GetString());
        Assert.Equal(2, (await server.GetAsync($"/api/cases/{id}")).Json.GetProperty("turns").GetArrayLength());
        Assert.Equal(HttpStatusCode.OK, (await server.GetAsync($"/api/cases/{id}/summary")).Status);
        Assert.Equal(HttpStatusCode.OK, (await server.GetAsync($"/api/cases/{id}/log")).Status);
    }

    [Theory]
    [InlineData("{}")]
    [InlineData("""{"turnId":"1"}""")]
    [InlineData("""{"note":"x"}""")]
    [InlineData("""{"turnId":"1","note":"x","visit":"end"}""")]
    [InlineData("""{"turnId":"1","visit":"sometime"}""")]
    [InlineData("""{"turnId":"1","unit":{"by":"somebody else"}}""")]
    [InlineData("""{"turnId":"1","unit":{"installed":"yesterday"}}""")]
    [InlineData("[1]")]
    public async Task Post_AnotherForm_IsRefusedWithTheForms(string body)
    {
        await using var server = await RunningServer.StartAsync();
        string id = await server.OpenCaseAsync();

        var (status, json) = await server.PostAsync($"/api/cases/{id}/job", body);

        Assert.Equal(HttpStatusCode.BadRequest, status);
        Assert.Contains("turnId", json.GetProperty("detail").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Job_OfAnotherTechnician_IsAsIfItWereNotThere()
    {
        await using var company = await Company.StartAsync();
        string id = await Company.OpenCaseAsync(await company.BrowserOfAsync("tom"));
        var (other, desk) = (await company.BrowserOfAsync("tilda"), await company.BrowserOfAsync("dora"));

        using var written =
            await other.PostAsJsonAsync($"/api/cases/{id}/job", new { turnId = "1", note = "mine now" });
        using var byDesk =
            await desk.PostAsJsonAsync($"/api/cases/{id}/job", new { turnId = "1", note = "Caller waits." });

        Assert.Equal(HttpStatusCode.NotFound, written.StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, await Company.StatusAsync(other, $"/api/cases/{id}/job"));
        var notes = (await byDesk.Content.ReadFromJsonAsync<JsonElement>()).GetProperty("job").GetProperty("notes");
        Assert.Equal("dora", Assert.Single(notes.EnumerateArray()).GetProperty("by").GetString());
    }
}
