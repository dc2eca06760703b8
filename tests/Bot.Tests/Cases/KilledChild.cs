using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using DxAssistant.Cases;

namespace DxAssistant.Bot.Tests.Cases;

/// <summary>A program that is killed without warning while it appends.</summary>
/// <param name="place">The file of cases, or how to reach the database.</param>
internal sealed class KilledChild(string place)
{
    private const int Workers = 4;

    /// <summary>Kills it after so many acknowledged turns, and holds the store to all of them.</summary>
    public async Task CheckAsync(int turns)
    {
        var acknowledged = await RunAsync(turns);
        await using var store = await Child.PlaceOf(place).OpenAsync(TimeProvider.System);
        var logs = new Dictionary<string, ImmutableArray<StoredEvent>>();
        for (int worker = 0; worker < Workers; worker++) logs[$"case{worker}"] = await store.ReadAsync($"case{worker}");

        Assert.True(acknowledged.Count >= turns);
        Assert.All(acknowledged, a => Assert.Equal(2, logs[a.Case].Count(e => e.TurnId == a.Turn)));
        Assert.All(logs.Values, log =>
        {
            Assert.Equal(Enumerable.Range(1, log.Length).Select(n => (long)n), log.Select(e => e.Sequence));
            Assert.All(log.GroupBy(e => e.TurnId), turn => Assert.Equal(2, turn.Count()));
        });
    }

    /// <summary>Kills it after so many acknowledged turns; all that were acknowledged.</summary>
    public async Task<List<(string Case, string Turn)>> RunAsync(int turns)
    {
        var start = new ProcessStartInfo("dotnet")
        {
            ArgumentList =
                { "exec", typeof(Child).Assembly.Location, place, Workers.ToString(CultureInfo.InvariantCulture) },
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
