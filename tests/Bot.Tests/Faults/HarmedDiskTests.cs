using System.Net;
using DxAssistant.Bot.Tests.Cases;
using DxAssistant.Bot.Tests.Load;
using DxAssistant.Cases.Claims;
using DxAssistant.Cases.Sqlite;

namespace DxAssistant.Bot.Tests.Faults;

/// <summary>A disk that is full, and one that may not be written.</summary>
public sealed class HarmedDiskTests
{
    private const int People = 6;

    [SmallDiskFact]
    public async Task Talk_DiskIsFull_SaysSoAndGoesOnOnceThereIsRoom()
    {
        using var folder = new TemporaryFolder();
        using var outside = new TemporaryFolder();
        string file = folder.File("cases.db");
        await using var server =
            await SmallDisk.StartAsync(folder.Path, "head -c 2500k /dev/zero > filler", "--data", file);
        await using var talkers = Talkers.With(People, FaultSize.Seed, () => [server.Address]);
        talkers.Begin(People);

        var (said, caseId) = await RefusalAsync(server);

        Assert.Contains("the disk is full; make room on it, then send it again", said, StringComparison.Ordinal);
        using var client = new CaseClient(server.Address);
        Assert.NotEmpty(await client.GetAsync($"/api/cases/{caseId}"));
        int before = talkers.Acknowledged.Count;
        File.Delete(SmallDisk.Seen(server, folder.File("filler")));
        await talkers.AnsweredAsync(20);
        await talkers.EndAsync();
        Assert.True(talkers.Acknowledged.Count >= before + 20);
        Assert.Empty(talkers.Odd);
        await IsKeptAsync(server, file, outside.File("cases.db"), talkers);
    }

    [SmallDiskFact]
    public async Task Start_DiskMayNotBeWritten_SaysWhatToDoAndLeavesTheFile()
    {
        using var folder = new TemporaryFolder();
        using var outside = new TemporaryFolder();
        string made = outside.File("cases.db");
        await using (SqliteCaseStore.Open(made, TimeProvider.System))
        {
            // Only its tables.
        }

        byte[] before = await File.ReadAllBytesAsync(made);

        var error = await Assert.ThrowsAsync<InvalidOperationException>(() => SmallDisk.StartAsync(
            folder.Path, $"cp '{made}' cases.db && cd / && mount -o remount,ro none '{folder.Path}'", "--data",
            folder.File("cases.db"), "--accounts", outside.File("accounts.db")));

        Assert.Contains("ended with 2", error.Message, StringComparison.Ordinal);
        Assert.Contains("may not be written; give the program's account the right", error.Message,
            StringComparison.Ordinal);
        Assert.Equal(before, await File.ReadAllBytesAsync(made));
    }

    // Opens cases until one is refused; the last that was not is there to be read.
    private static async Task<(string Said, string CaseId)> RefusalAsync(ServerProcess server)
    {
        using var client = new CaseClient(server.Address);
        using var http = new HttpClient { BaseAddress = server.Address };
        string caseId = await client.OpenAsync();
        while (true)
        {
            using var answer = await http.PostAsync("/api/cases", null);
            string said = await answer.Content.ReadAsStringAsync();
            if (answer.StatusCode == HttpStatusCode.ServiceUnavailable) return (said, caseId);
            Assert.True(answer.IsSuccessStatusCode, said);
        }
    }

    // The disk goes with the program.
    private static async Task IsKeptAsync(ServerProcess server, string file, string copy, Talkers talkers)
    {
        foreach (string part in new[] { "", "-wal" }) File.Copy(SmallDisk.Seen(server, file + part), copy + part);
        await using var store = SqliteCaseStore.Open(copy, TimeProvider.System);
        await using var claims = SqlClaimStore.Open(copy);
        await Kept.CheckAsync(store, talkers.Acknowledged);
        await Kept.CheckAsync(claims, talkers.Claims);
    }
}
