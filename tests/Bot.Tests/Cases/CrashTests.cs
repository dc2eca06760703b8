using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using DxAssistant.Cases;
using DxAssistant.Cases.Sqlite;
using DxAssistant.Conversation.Events;

namespace DxAssistant.Bot.Tests.Cases;

/// <summary>The program is killed without warning while it appends.</summary>
public sealed class CrashTests
{
    private const int Workers = 4;

    [Theory]
    [InlineData(1)]
    [InlineData(40)]
    [InlineData(400)]
    public async Task Kill_WhileAppending_EverythingAcknowledgedIsThereAndNoTurnIsHalf(int turnsBeforeTheKill)
    {
        using var folder = new TemporaryFolder();
        string file = folder.File("cases.db");
        var acknowledged = await AppendUntilKilledAsync(file, turnsBeforeTheKill);

        await using var store = SqliteCaseStore.Open(file, TimeProvider.System);
        var logs = new Dictionary<string, ImmutableArray<StoredEvent>>();
        for (int worker = 0; worker < Workers; worker++) logs[$"case{worker}"] = await store.ReadAsync($"case{worker}");

        Assert.True(acknowledged.Count >= turnsBeforeTheKill);
        Assert.All(acknowledged, a => Assert.Equal(2, logs[a.Case].Count(e => e.TurnId == a.Turn)));
        Assert.All(logs.Values, log =>
        {
            Assert.Equal(Enumerable.Range(1, log.Length).Select(n => (long)n), log.Select(e => e.Sequence));
            Assert.All(log.GroupBy(e => e.TurnId), turn => Assert.Equal(2, turn.Count()));
        });
    }

    [Fact]
    public async Task Kill_ThenOpen_TheCaseGoesOn()
    {
        using var folder = new TemporaryFolder();
        string file = folder.File("cases.db");
        await AppendUntilKilledAsync(file, 10);

        await using var store = SqliteCaseStore.Open(file, TimeProvider.System);
        var log = await store.ReadAsync("case0");
        var result = await store.AppendAsync("case0", log.Length, "after", [new CodeReported("b6", "b6")]);

        Assert.IsType<AppendResult.Appended>(result);
    }

    private static async Task<List<(string Case, string Turn)>> AppendUntilKilledAsync(string file, int turns)
    {
        var start = new ProcessStartInfo("dotnet")
        {
            ArgumentList =
                { "exec", typeof(Child).Assembly.Location, file, Workers.ToString(CultureInfo.InvariantCulture) },
            RedirectStandardOutput = true,
        };
        using var child = Process.Start(start)!;
        var acknowledged = new List<(string, string)>();
        while (await child.StandardOutput.ReadLineAsync() is { } line)
        {
            if (line.Split(' ') is [var name, var turn]) acknowledged.Add((name, turn));

            // SIGKILL: no finally block, no flush. Lines that are already in the pipe were acknowledged too.
            if (acknowledged.Count == turns) child.Kill();
        }

        await child.WaitForExitAsync();
        return acknowledged;
    }
}
