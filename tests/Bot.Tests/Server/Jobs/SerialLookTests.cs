using System.Net;
using System.Net.Http.Json;
using DxAssistant.Bot.Tests.Cases;
using DxAssistant.Bot.Tests.Server.Accounts;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Server.Jobs;

namespace DxAssistant.Bot.Tests.Server.Jobs;

/// <summary>
/// Whoever types a serial number learns of the cases of others what saves a part, and leaves a line behind.
/// </summary>
public sealed class SerialLookTests
{
    private const string Serial = "BW24071532";

    [Fact]
    public void May_NumbersWithoutEnd_StopsAtTheBoundForADay()
    {
        var clock = new SetClock(new(2030, 5, 6, 12, 0, 0, TimeSpan.Zero));
        var pace = new SerialPace(clock);
        for (int number = 0; number < SerialPace.Most; number++) Assert.True(pace.May("tom", $"BW{number}"));

        Assert.True(pace.May("tom", "BW3"));
        Assert.False(pace.May("tom", "BW-new"));
        Assert.True(pace.May("tilda", "BW-new"));
        clock.Time = clock.Time.AddDays(1);
        Assert.True(pace.May("tom", "BW-new"));
    }

    [Fact]
    public async Task NoteUnit_SerialOfAnothersCase_IsToldWithoutTheCaseAndAudited()
    {
        await using var company = await Company.StartAsync();
        await RepairedAsync(company, "old");
        var tilda = await company.BrowserOfAsync("tilda");

        string id = await NoteAsync(tilda);

        string log =
            string.Join(' ', (await company.Server.Store.ReadRowsAsync(id)).Rows.Select(row => row.Body + row.Aside));
        Assert.Contains("replace-fan", log, StringComparison.Ordinal);
        Assert.DoesNotContain("\"old\"", log, StringComparison.Ordinal);
        Assert.Contains(company.Book.Audit(50),
            line => line is { Who: "tilda", Did: "was told earlier work of others on serial", To: Serial });
    }

    [Fact]
    public async Task NoteUnit_ByTheDesk_IsToldTheCaseAndNotAudited()
    {
        await using var company = await Company.StartAsync();
        await RepairedAsync(company, "old");
        var dora = await company.BrowserOfAsync("dora");

        string id = await NoteAsync(dora);

        Assert.Contains("\"old\"",
            string.Join(' ', (await company.Server.Store.ReadRowsAsync(id)).Rows.Select(row => row.Body)),
            StringComparison.Ordinal);
        Assert.DoesNotContain(company.Book.Audit(50), line => line.Did.Contains("serial", StringComparison.Ordinal));
    }

    private static async Task<string> NoteAsync(HttpClient browser)
    {
        string id = await Company.OpenCaseAsync(browser);
        using var noted = await browser.PostAsJsonAsync($"/api/cases/{id}/job",
            new { turnId = "u1", unit = new { serial = Serial } });
        Assert.Equal(HttpStatusCode.OK, noted.StatusCode);
        return id;
    }

    private static async Task RepairedAsync(Company company, string id) =>
        await company.Server.Store.AppendAsync(id, 0, "t1",
        [
            new Opened("test"), new Said("t1", "tom", new MessageBody.Words("works")),
            new UnitNoted("tom", 1, null, null, Serial, null, null),
            new RepairDone("replace-fan"), new RepairVerified("replace-fan", "fan-failed", true),
            new Closed("repaired"),
            new Replied(new Reply([], null, [], null)),
        ]);
}
