using System.Net.Http.Json;
using System.Text.Json;
using DxAssistant.Bot.Tests.Server.Accounts;

namespace DxAssistant.Bot.Tests.Server.Desk;

/// <summary>Calls put aside are found by whoever called, their number, and what was noted.</summary>
public sealed class CallEndpointsTests
{
    [Fact]
    public async Task Calls_BySearch_AreThoseThatFit()
    {
        await using var company = await Company.StartAsync();
        var (desk, other) = (await company.BrowserOfAsync("dora"), await company.BrowserOfAsync("tilda"));
        string id = await Company.OpenCaseAsync(desk);
        await desk.PutAsJsonAsync($"/api/cases/{id}/call", new { caller = "Ingrid Hale", phone = "+1 555 0142" });
        await desk.PostAsJsonAsync($"/api/cases/{id}/call/notes", new { text = "has no ladder" });

        foreach (string text in new[] { "", "hale", "5550142", "(555) 01-42", "ladder" })
            Assert.Equal(["Ingrid Hale"], await CallersAsync(desk, text));
        Assert.Empty(await CallersAsync(desk, "5550143"));
        Assert.Empty(await CallersAsync(other, "hale"));
    }

    private static async Task<string[]> CallersAsync(HttpClient http, string text) =>
        [.. (await http.GetFromJsonAsync<JsonElement>($"/api/calls?text={Uri.EscapeDataString(text)}")).EnumerateArray()
            .Select(slip => slip.GetProperty("caller").GetString()!)];
}
