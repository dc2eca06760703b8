using System.Net;
using System.Net.Http.Json;
using DxAssistant.Bot.Tests.Server.Accounts;

namespace DxAssistant.Bot.Tests.Server.Privacy;

/// <summary>
/// Everybody is told what is kept; only the desk looks for it, and that is written down without the name.
/// </summary>
public sealed class PrivacyTests
{
    [Fact]
    public async Task Personal_DeskFindsAndRemoves_TechnicianMayNot()
    {
        await using var company = await Company.StartAsync();
        var (tom, dora) = (await company.BrowserOfAsync("tom"), await company.BrowserOfAsync("dora"));
        string id = await Company.OpenCaseAsync(tom);
        using (await tom.PostAsJsonAsync($"/api/cases/{id}/turns",
            new { turnId = "t1", text = "Mrs Ottery says the fan stands" })) { }

        Assert.Equal(HttpStatusCode.Forbidden, await Company.StatusAsync(tom, "/api/personal?about=Ottery"));
        Assert.Equal(HttpStatusCode.BadRequest, await Company.StatusAsync(dora, "/api/personal?about=Ot"));
        Assert.Contains(id, await dora.GetStringAsync("/api/personal/cases?about=ottery"), StringComparison.Ordinal);
        Assert.Contains("Mrs Ottery says", await dora.GetStringAsync("/api/personal?about=ottery"),
            StringComparison.Ordinal);
        using var removed = await dora.DeleteAsync($"/api/personal/cases/{id}");
        Assert.Equal(HttpStatusCode.NoContent, removed.StatusCode);
        Assert.Equal("[]", await dora.GetStringAsync("/api/personal/cases?about=ottery"));
        Assert.DoesNotContain("Ottery", await tom.GetStringAsync($"/api/cases/{id}"), StringComparison.Ordinal);

        var lines = company.Book.Audit(20);
        Assert.Contains(lines, line => line is { Who: "dora", Did: "removed words of case" } && line.To == id);
        Assert.Contains(lines, line => line is { Who: "dora", Did: "gave out what is kept about a person" });
        Assert.DoesNotContain(lines, line => $"{line.Did} {line.To}".Contains("ttery", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Privacy_Page_SaysWhatWhyAndHowLong()
    {
        await using var server = await RunningServer.StartAsync(Shipped.InUse);

        var (status, page) = await server.GetAsync("/api/privacy");

        Assert.Equal(HttpStatusCode.OK, status);
        Assert.Equal(7, page.GetProperty("kinds").GetArrayLength());
        Assert.Equal("Kept until somebody removes it.", page.GetProperty("kinds")[0].GetProperty("howLong")
            .GetString());
    }
}
